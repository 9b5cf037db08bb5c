package rimebook.performances;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/**
 * Whose cards count in a segment. A seat has one counting official for the whole segment,
 * never for a part of it: a substitute's cards and the judge's are not mixed (from
 * memory; no rule text was found).
 *
 * @param judges the judges' seats as drawn, by number
 * @param substitutes the seats whose cards are taken and count only in place of a judge's
 * @param others who sits on the panel without a card
 * @param changes all changes of this segment, oldest first
 */
public record CountingPanel(List<SeatView> judges, List<SeatView> substitutes, List<SeatView> others,
		List<PanelChange> changes) {

	/** The seats whose cards count, in the order of the judges' numbers. */
	public List<SeatView> seats() {
		return this.judges.stream().flatMap((judge) -> counting(judge).stream()).toList();
	}

	/** Every seat that has a card. */
	public List<SeatView> senders() {
		return Stream.concat(this.judges.stream(), this.substitutes.stream()).toList();
	}

	/** Whose cards counted at a moment. */
	public CountingPanel asOf(Instant moment) {
		return new CountingPanel(this.judges, this.substitutes, this.others,
				this.changes.stream().filter((change) -> !change.madeAt().isAfter(moment)).toList());
	}

	/** Whose cards count for a judge's seat; empty where it is left out. */
	public Optional<SeatView> counting(SeatView judge) {
		PanelChange change = change(judge.id());
		if (change == null || change.kind() == PanelChange.Kind.SEAT_BACK) {
			return Optional.of(judge);
		}
		return (change.kind() == PanelChange.Kind.SUBSTITUTED)
				? this.substitutes.stream().filter((seat) -> seat.id().equals(change.substitute())).findFirst()
				: Optional.empty();
	}

	/** What was said last about a judge's seat, {@code null} for nothing. */
	@Nullable PanelChange change(SeatId judge) {
		return newest((change) -> change.kind().isAboutWholeSegment() && change.isOf(judge));
	}

	/** Whose seat a substitute has taken over, if any. */
	public Optional<SeatView> replacedBy(SeatId substitute) {
		return this.judges.stream()
			.filter((judge) -> counting(judge).filter((seat) -> seat.id().equals(substitute)).isPresent())
			.filter((judge) -> !judge.id().equals(substitute))
			.findFirst();
	}

	/** Tell whether the marks of one card are absent although its seat counts. */
	public boolean isExcused(PerformanceId performance, SeatId seat) {
		PanelChange newest = newest(
				(change) -> !change.kind().isAboutWholeSegment() && change.isOf(seat) && change.isOf(performance));
		return newest != null && newest.kind() == PanelChange.Kind.EXCUSED;
	}

	/** The changes that hold now, oldest first. */
	List<PanelChange> standing() {
		return this.changes.stream().filter(this::holds).toList();
	}

	private boolean holds(PanelChange change) {
		return switch (change.kind()) {
			case SUBSTITUTED, LEFT_OUT -> change == change(change.seat());
			case EXCUSED -> change == newest((other) -> !other.kind().isAboutWholeSegment() && other.isOf(change.seat())
					&& other.isOf(Objects.requireNonNull(change.performance())));
			case SEAT_BACK, EXCUSE_OVER -> false;
		};
	}

	private @Nullable PanelChange newest(Predicate<PanelChange> about) {
		return this.changes.stream().filter(about).reduce((older, newer) -> newer).orElse(null);
	}

	/** The judge of that seat; empty for the substitute’s. */
	public Optional<SeatView> judge(SeatId id) {
		return this.judges.stream().filter((judge) -> judge.id().equals(id)).findFirst();
	}

	String label(SeatId id) {
		return senders().stream().filter((seat) -> seat.id().equals(id)).map(SeatView::label).findFirst().orElse("");
	}

	/**
	 * What the tablet of a seat is told about it; {@code null} where nothing is unusual.
	 */
	public @Nullable String told(SeatId seat) {
		if (this.substitutes.stream().anyMatch((substitute) -> substitute.id().equals(seat))) {
			return replacedBy(seat).map((judge) -> "Your cards count in place of those of " + judge.label() + ".")
				.orElse("You are the substitute: your cards count only if you take over a seat.");
		}
		PanelChange change = change(seat);
		if (change == null || change.kind() == PanelChange.Kind.SEAT_BACK) {
			return null;
		}
		return (change.kind() == PanelChange.Kind.SUBSTITUTED)
				? "The substitute has taken over this seat: the substitute’s cards count, not yours."
				: "This seat is left out of this segment: its cards do not count.";
	}

}
