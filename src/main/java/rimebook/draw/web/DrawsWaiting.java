package rimebook.draw.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DaySegment;
import rimebook.draw.StartingOrderDraw;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/** The segments that can be drawn and are not. */
@Component
class DrawsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final StartingOrderDraw draw;

	DrawsWaiting(UnderWay underWay, StartingOrderDraw draw) {
		this.underWay = underWay;
		this.draw = draw;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay.segments(CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.flatMap((held) -> this.draw.ofSegment(held.segment().id()).isEmpty() ? line(held) : late(held));
	}

	/** Teams that came after the draw wait for the referee to give them a number. */
	private Stream<Waiting> late(DaySegment held) {
		return Stream.of(held.segment().id())
			.filter(this.draw::mayAdd)
			.flatMap((segment) -> this.draw.late(segment).stream())
			.map((late) -> new Waiting(30, "draw.waiting.late", late.teams().size(),
					new Waiting.Place(held.where(), held.competition().name()), "/desk/draw/" + held.segment().id()));
	}

	private Stream<Waiting> line(DaySegment held) {
		StartingOrderDraw.Offer offer = this.draw.offer(held.segment().id());
		return (offer.refusal() != null) ? Stream.empty()
				: Stream.of(new Waiting(40, "draw.waiting.draw", offer.field(),
						new Waiting.Place(held.where(), held.competition().name()),
						"/desk/draw/" + held.segment().id()));
	}

}
