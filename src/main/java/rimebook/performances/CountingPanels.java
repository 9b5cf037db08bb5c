package rimebook.performances;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;
import rimebook.wording.Sentence;

/** Reads whose cards count in a segment. */
@Component
public class CountingPanels {

	private final PanelChangeRepository changes;

	private final PerformanceRepository performances;

	private final Panels panels;

	private final Competitions competitions;

	CountingPanels(PanelChangeRepository changes, PerformanceRepository performances, Panels panels,
			Competitions competitions) {
		this.changes = changes;
		this.performances = performances;
		this.panels = panels;
		this.competitions = competitions;
	}

	/** Whose cards count in a segment. */
	public CountingPanel of(SegmentId segment) {
		return of(this.competitions.eventOf(segment), segment);
	}

	/** The same for whoever has read the event already. */
	public CountingPanel of(EventView event, SegmentId segment) {
		List<SeatView> seats = this.panels.seated(event);
		return new CountingPanel(seats.stream().filter((seat) -> seat.kind() == SeatKind.JUDGE).toList(),
				seats.stream().filter((seat) -> seat.kind() != SeatKind.JUDGE && seat.kind().hasCard()).toList(),
				seats.stream().filter((seat) -> !seat.kind().hasCard()).toList(),
				this.changes.findBySegmentOrderBySequence(segment.value()));
	}

	/** The same in numbers and sentences, for the standing. */
	ClosedCards.CountedPanel counted(CountingPanel panel) {
		List<Integer> judges = panel.judges()
			.stream()
			.filter((judge) -> panel.counting(judge).isPresent())
			.map(SeatView::number)
			.toList();
		List<Sentence> notes = new ArrayList<>();
		panel.standing().forEach((change) -> notes.add(words(change, panel)));
		if (judges.size() < panel.judges().size() && judges.size() % 2 == 0) {
			notes.add(Sentence.of("panel.even", judges.size()));
		}
		return new ClosedCards.CountedPanel(judges, notes, seated(panel));
	}

	/** By name, since a seat may have somebody else tomorrow. */
	private static List<ClosedCards.SeatedOfficial> seated(CountingPanel panel) {
		return Stream.of(panel.others(), panel.senders())
			.flatMap(List::stream)
			.flatMap((seat) -> Stream.ofNullable(seat.official())
				.map((official) -> new ClosedCards.SeatedOfficial(seat.place(), official.name(), official.club())))
			.sorted(Comparator.comparing(ClosedCards.SeatedOfficial::place, SeatPlace.IN_ORDER))
			.toList();
	}

	/** A change that holds in one sentence. */
	Sentence words(PanelChange change, CountingPanel panel) {
		String judge = panel.label(change.seat());
		return switch (change.kind()) {
			case SUBSTITUTED -> Sentence.of("panel.substituted", judge, change.reason());
			case LEFT_OUT -> Sentence.of("panel.left-out", judge, change.rule(), change.reason());
			case EXCUSED -> Sentence.of("panel.excused", startNumber(change), judge, change.rule(), change.reason());
			case SEAT_BACK, EXCUSE_OVER -> Sentence.NONE;
		};
	}

	private int startNumber(PanelChange change) {
		return this.performances.findById(Objects.requireNonNull(change.performance()).value())
			.map(Performance::startNumber)
			.orElse(0);
	}

}
