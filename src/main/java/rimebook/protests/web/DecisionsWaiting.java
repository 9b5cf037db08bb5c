package rimebook.protests.web;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DaySegment;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.protests.ProposedCorrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.shared.Actor;

/** Protests without their decision and corrections that need a second official. */
@Component
class DecisionsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Protests protests;

	private final ProposedCorrections proposed;

	DecisionsWaiting(UnderWay underWay, Protests protests, ProposedCorrections proposed) {
		this.underWay = underWay;
		this.protests = protests;
		this.proposed = proposed;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay.segments(CompetitionState.RUNNING)
			.flatMap((held) -> lines(held, viewer))
			.filter((line) -> line.count() > 0);
	}

	private Stream<Waiting> lines(DaySegment held, Actor viewer) {
		List<ProtestView.State> protests = this.protests.ofSegment(held.segment().id())
			.stream()
			.map(ProtestView::state)
			.toList();
		return Stream.of(
				line(held, "protests.waiting.decide", count(protests, ProtestView.State.FILED)).only("REFEREE"),
				line(held, "protests.waiting.confirm", count(protests, ProtestView.State.UNCONFIRMED)),
				line(held, "protests.waiting.approve", this.proposed.byOthers(held.segment().id(), viewer))
					.only("REFEREE", "ACCOUNTANT"),
				line(held, "protests.waiting.own", this.proposed.by(viewer, held.segment().id())).only("REFEREE",
						"ACCOUNTANT"));
	}

	private static int count(List<ProtestView.State> states, ProtestView.State wanted) {
		return (int) states.stream().filter(wanted::equals).count();
	}

	private static Waiting line(DaySegment held, String key, int count) {
		return new Waiting(20, key, count, new Waiting.Place(held.where(), held.competition().name()),
				"/desk/protests/" + held.segment().id());
	}

}
