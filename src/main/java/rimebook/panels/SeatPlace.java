package rimebook.panels;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import rimebook.competition.EventView;
import rimebook.wording.Sentence;

/**
 * A place on the panel that an event needs or may have, whether somebody sits there or
 * not.
 *
 * @param number which one of its kind, from 1
 */
public record SeatPlace(SeatKind kind, int number) {

	private static final List<SeatKind> ORDER = List.of(SeatKind.REFEREE, SeatKind.ASSISTANT_REFEREE, SeatKind.JUDGE,
			SeatKind.TECHNICAL_CONTROLLER, SeatKind.TECHNICAL_SPECIALIST, SeatKind.DATA_OPERATOR, SeatKind.SUBSTITUTE,
			SeatKind.ACCOUNTANT, SeatKind.ANNOUNCER, SeatKind.TIMEKEEPER);

	/** Referees first, then judges and the technical panel, then the rest. */
	public static final Comparator<SeatPlace> IN_ORDER = Comparator
		.comparing((SeatPlace place) -> ORDER.indexOf(place.kind()))
		.thenComparing(SeatPlace::number);

	/** The places of an event in the order in which they are listed. */
	static List<SeatPlace> of(EventView event) {
		Stream<SeatPlace> judges = IntStream.rangeClosed(1, event.judging().judges())
			.mapToObj((number) -> new SeatPlace(SeatKind.JUDGE, number));
		Stream<SeatPlace> technical = event.hasTechnicalPanel() ? technical() : Stream.empty();
		return Stream
			.of(single(SeatKind.REFEREE, SeatKind.ASSISTANT_REFEREE), judges, technical,
					single(SeatKind.SUBSTITUTE, SeatKind.ACCOUNTANT, SeatKind.ANNOUNCER, SeatKind.TIMEKEEPER))
			.flatMap((places) -> places)
			.toList();
	}

	/** One controller, two specialists and a data operator: common practice. */
	private static Stream<SeatPlace> technical() {
		return Stream.of(new SeatPlace(SeatKind.TECHNICAL_CONTROLLER, 1),
				new SeatPlace(SeatKind.TECHNICAL_SPECIALIST, 1), new SeatPlace(SeatKind.TECHNICAL_SPECIALIST, 2),
				new SeatPlace(SeatKind.DATA_OPERATOR, 1));
	}

	private static Stream<SeatPlace> single(SeatKind... kinds) {
		return Stream.of(kinds).map((kind) -> new SeatPlace(kind, 1));
	}

	/** The place as people call it: "Judge 3". */
	public Sentence spoken() {
		return this.kind.spoken(this.number);
	}

	/** The same in English, as on the record. */
	public String label() {
		return this.kind.label(this.number);
	}

	/** Tell whether that seat stands at this place. */
	public boolean isOf(SeatView seat) {
		return equals(seat.place());
	}

	/** Tell whether the panel cannot work without it. */
	public boolean isRequired() {
		return this.kind == SeatKind.JUDGE || this.kind == SeatKind.REFEREE;
	}

}
