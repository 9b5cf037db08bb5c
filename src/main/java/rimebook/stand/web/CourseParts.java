package rimebook.stand.web;

import java.time.Instant;
import java.util.Map;
import java.util.function.Predicate;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.arrival.Arrivals;
import rimebook.arrival.Strength;
import rimebook.arrival.TooFew;
import rimebook.entries.EntryId;
import rimebook.music.Music;
import rimebook.pages.RinkClock;
import rimebook.paper.PaperKeying;
import rimebook.performances.StandingAfterCards;
import rimebook.stand.StandView;

/** Lays out what has become of the performances of a segment. */
@Component
class CourseParts {

	private final SkatingAgain skatingAgain;

	private final PaperKeying keying;

	private final StandingAfterCards standings;

	private final Punctuality punctuality;

	private final Music music;

	private final Arrivals arrivals;

	private final Strength strength;

	CourseParts(SkatingAgain skatingAgain, PaperKeying keying, StandingAfterCards standings, Punctuality punctuality,
			Music music, Arrivals arrivals, Strength strength) {
		this.music = music;
		this.arrivals = arrivals;
		this.strength = strength;
		this.punctuality = punctuality;
		this.skatingAgain = skatingAgain;
		this.keying = keying;
		this.standings = standings;
	}

	/** The parts as they are at that moment. */
	StandParts.Course of(StandView view, RinkClock rink, Instant now) {
		Map<EntryId, TooFew> few = this.strength.tooFew(view.event().id());
		OrderPart.Lacks lacks = new OrderPart.Lacks(lacksMusic(view), isNotDone(view), few::containsKey);
		return new StandParts.Course(OrderPart.of(view, this.punctuality.of(view), lacks), FewPart.of(view, few),
				ReopenedPart.of(view, rink, now), this.skatingAgain.part(view, rink),
				new PaperPart(this.keying.unsettled(view.segment().id())),
				this.standings.newest(view.segment().id()).map(StandingPart::of).orElse(StandingPart.NONE));
	}

	private Predicate<EntryId> lacksMusic(StandView view) {
		return this.music.withMusic(view.segment().id())
			.<Predicate<EntryId>>map((have) -> (entry) -> !have.contains(entry))
			.orElse((entry) -> false);
	}

	private Predicate<EntryId> isNotDone(StandView view) {
		return this.arrivals.notDone(view.event().id())
			.<Predicate<EntryId>>map((left) -> left::contains)
			.orElse((entry) -> false);
	}

	/** Put the forms into the page; one that was refused stays as it was typed. */
	void forms(StandView view, Model model) {
		this.skatingAgain.into(view, model);
	}

}
