package rimebook.panels.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DayEvent;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.panels.Panels;
import rimebook.panels.SeatConflict;
import rimebook.shared.Actor;

/** The panels with empty seats, and those where a bond has come up. */
@Component
class PanelsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Panels panels;

	PanelsWaiting(UnderWay underWay, Panels panels) {
		this.underWay = underWay;
		this.panels = panels;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay.events(CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.flatMap((held) -> Stream
				.of(line(held, 45, "panels.waiting.seats", this.panels.missing(held.event().id()).size()),
						line(held, 18, "panels.waiting.bound", bound(held)))
				.filter((line) -> line.count() > 0));
	}

	private int bound(DayEvent held) {
		return (int) this.panels.conflicts(held.event().id()).stream().filter(SeatConflict::isUnsettled).count();
	}

	private static Waiting line(DayEvent held, int order, String key, int count) {
		return new Waiting(order, key, count, new Waiting.Place(held.event().name(), held.competition().name()),
				"/desk/panel/" + held.event().id());
	}

}
