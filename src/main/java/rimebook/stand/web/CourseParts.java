package rimebook.stand.web;

import java.time.Instant;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

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

	CourseParts(SkatingAgain skatingAgain, PaperKeying keying, StandingAfterCards standings, Punctuality punctuality) {
		this.punctuality = punctuality;
		this.skatingAgain = skatingAgain;
		this.keying = keying;
		this.standings = standings;
	}

	/** The parts as they are at that moment. */
	StandParts.Course of(StandView view, RinkClock rink, Instant now) {
		return new StandParts.Course(OrderPart.of(view, this.punctuality.of(view)), ReopenedPart.of(view, rink, now),
				this.skatingAgain.part(view, rink), new PaperPart(this.keying.unsettled(view.segment().id())),
				this.standings.newest(view.segment().id()).map(StandingPart::of).orElse(StandingPart.NONE));
	}

	/** Put the forms into the page; one that was refused stays as it was typed. */
	void forms(StandView view, Model model) {
		this.skatingAgain.into(view, model);
	}

}
