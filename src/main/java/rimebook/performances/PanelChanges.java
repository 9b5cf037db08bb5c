package rimebook.performances;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Lets a substitute take over a judge's seat. From then on all cards of the substitute of
 * that segment count in place of that judge's, those given before as well; the two are
 * never mixed (from memory; the rulebook in force and its officials decide).
 */
@Service
public class PanelChanges {

	private final HeldSegment.Source segments;

	private final CountingPanels panels;

	private final PanelChangeRepository changes;

	private final CardBooks books;

	private final Entries entries;

	private final Acts acts;

	PanelChanges(HeldSegment.Source segments, CountingPanels panels, PanelChangeRepository changes, CardBooks books,
			Entries entries, Acts acts) {
		this.acts = acts;
		this.segments = segments;
		this.panels = panels;
		this.changes = changes;
		this.books = books;
		this.entries = entries;
	}

	/**
	 * Let the substitute take over a judge's seat for the segment; a new standing says
	 * so.
	 * @param judge whose seat
	 * @param reason why, up to 500 characters
	 * @throws RuleViolationException {@code substitute-missing} where nobody sits on the
	 * substitute's seat; {@code substitute-cards-missing} with the names of the teams
	 * that the substitute has no card for, until these are keyed in from paper
	 * @throws ConflictException {@code substitute-taken} if the substitute has taken over
	 * a seat already; {@code cards-reopened} while cards are open again
	 */
	@Transactional
	public void takeOver(SegmentId segment, SeatId judge, String reason, Actor actor) {
		List<Performance> all = this.segments.all(segment);
		CountingPanel panel = this.panels.of(segment);
		SeatView seat = seat(panel, judge);
		String why = Required.text("reason", reason, 500);
		SeatView substitute = substitute(panel);
		requireCards(all, substitute, "substitute-cards-missing",
				Sentence.of("performances.substitute-cannot-take-over", seat.spoken()));
		PanelChange change = new PanelChange(this.acts.nextId(), segment, next(panel),
				new PanelChange.Decided(PanelChange.Kind.SUBSTITUTED, judge, why), actor, this.acts.now())
			.by(substitute.id());
		keep(change,
				line(change, "seat.taken-over", actor).from(named(seat), named(substitute) + " for " + seat.label()));
	}

	/**
	 * Take back what was said about a judge's seat before the next cards are closed.
	 * @throws ConflictException as with a rule
	 * @throws RuleViolationException as with a rule
	 */
	@Transactional
	public void takeBack(SegmentId segment, SeatId judge, String reason, Actor actor) {
		takeBack(segment, judge, "", reason, actor);
	}

	/**
	 * Take back what was said about a judge's seat: its own cards count again, for the
	 * whole segment.
	 * @param rule by which a judge who was left out returns although cards were closed
	 * since, up to 120 characters; may be empty before that
	 * @throws ConflictException {@code change-settled} once cards were closed upon it,
	 * unless a judge who was left out returns by a rule; {@code change-unknown} if
	 * nothing was said about the seat
	 * @throws RuleViolationException {@code judge-cards-missing} with the names of the
	 * teams that this judge has no card for, until these are keyed in from paper
	 */
	@Transactional
	public void takeBack(SegmentId segment, SeatId judge, String rule, String reason, Actor actor) {
		List<Performance> all = this.segments.all(segment);
		CountingPanel panel = this.panels.of(segment);
		SeatView seat = seat(panel, judge);
		String why = Required.text("reason", reason, 500);
		PanelChange standing = Optional.ofNullable(panel.change(judge))
			.filter((change) -> change.kind() != PanelChange.Kind.SEAT_BACK)
			.orElseThrow(() -> new ConflictException("change-unknown",
					Sentence.of("performances.change-unknown", seat.spoken())));
		String by = Required.optional("takeBackRule", rule, 120);
		if (!canTakeBack(standing, all) && (!canReturn(standing) || by.isEmpty())) {
			throw settled(standing, seat);
		}
		requireCards(all, seat, "judge-cards-missing", Sentence.of("performances.seat-cannot-go-back", seat.spoken()));
		PanelChange change = new PanelChange(this.acts.nextId(), segment, next(panel),
				new PanelChange.Decided(PanelChange.Kind.SEAT_BACK, judge, why), actor, this.acts.now())
			.byRule(by);
		keep(change,
				line(change, "seat.taken-back", actor).from(this.panels.words(standing, panel).english(), named(seat)));
	}

	/** A seat that was left out has no other cards in its place. */
	private static boolean canReturn(PanelChange standing) {
		return standing.kind() == PanelChange.Kind.LEFT_OUT;
	}

	private static ConflictException settled(PanelChange standing, SeatView seat) {
		return new ConflictException("change-settled",
				Sentence.of(
						canReturn(standing) ? "performances.change-settled.may-return" : "performances.change-settled",
						seat.spoken()));
	}

	private void keep(PanelChange change, AuditedChange line) {
		SegmentId segment = change.segment();
		this.changes.save(change);
		CountingPanel panel = this.panels.of(segment);
		String words = (change.kind() == PanelChange.Kind.SEAT_BACK) ? "The cards of " + panel.label(change.seat())
				+ " count again" + inBrackets(change.rule()) + ". " + change.reason()
				: this.panels.words(change, panel).english();
		this.acts.publish(new PerformanceEvent.PanelChanged(segment, words, line));
	}

	private static AuditedChange line(PanelChange change, String action, Actor actor) {
		return AuditedChange.of(actor, "segment", change.segment(), action).because(change.reason());
	}

	private static String inBrackets(String rule) {
		return rule.isEmpty() ? "" : " (" + rule + ")";
	}

	private SeatView substitute(CountingPanel panel) {
		SeatView substitute = panel.substitutes()
			.stream()
			.filter((seat) -> seat.official() != null)
			.findFirst()
			.orElseThrow(() -> new RuleViolationException("substitute-missing",
					Sentence.of("performances.substitute-missing")));
		panel.replacedBy(substitute.id()).ifPresent((other) -> {
			throw new ConflictException("substitute-taken",
					Sentence.of("performances.substitute-taken", other.spoken()));
		});
		return substitute;
	}

	private void requireCards(List<Performance> all, SeatView seat, String code, Sentence refused) {
		List<Sentence> lacking = withoutCard(all, seat).map(this::numbered).toList();
		if (!lacking.isEmpty()) {
			throw new RuleViolationException(code,
					Sentence.of(
							(seat.tablet().pairedAt() == null) ? "performances.cards-lacking.no-tablet"
									: "performances.cards-lacking",
							refused, seat.spoken(), Series.withCommas(lacking)));
		}
	}

	private Sentence numbered(Performance performance) {
		return Sentence.of("performances.numbered-team", performance.startNumber(),
				this.entries.entry(performance.entry()).team().name());
	}

	/** The closed cards that a seat has not given, oldest number first. */
	private Stream<SegmentPanel.Lacking> lacking(List<Performance> all, SeatView seat) {
		return withoutCard(all, seat)
			.map((performance) -> new SegmentPanel.Lacking(seat, performance.id(), numbered(performance).english()));
	}

	private Stream<Performance> withoutCard(List<Performance> all, SeatView seat) {
		return all.stream()
			.filter(Performance::hasClosedCards)
			.filter((performance) -> !performance.takesCards())
			.filter((performance) -> !this.books.of(performance.segment()).missing(performance.view(), seat).isEmpty());
	}

	/** The missing cards of whoever could take over a seat, or return to one. */
	private List<SegmentPanel.Lacking> lacking(List<Performance> all, CountingPanel panel) {
		return panel.senders()
			.stream()
			.filter((seat) -> seat.official() != null && !panel.seats().contains(seat))
			.filter((seat) -> panel.judge(seat.id()).isEmpty() || isLeftOut(panel, seat))
			.flatMap((seat) -> lacking(all, seat))
			.toList();
	}

	private static boolean isLeftOut(CountingPanel panel, SeatView seat) {
		PanelChange change = panel.change(seat.id());
		return change != null && canReturn(change);
	}

	/** Return the panel of a segment as the referee decides about it. */
	@Transactional(readOnly = true)
	public SegmentPanel ofSegment(SegmentId segment) {
		CountingPanel panel = this.panels.of(segment);
		SeatView substitute = panel.substitutes()
			.stream()
			.filter((seat) -> seat.official() != null)
			.findFirst()
			.orElse(null);
		String takenOver = (substitute != null) ? panel.replacedBy(substitute.id()).map(SeatView::label).orElse("")
				: "";
		List<Performance> all = this.segments.look(segment);
		return new SegmentPanel(panel.seats(),
				panel.judges()
					.stream()
					.filter((judge) -> panel.counting(judge).filter((seat) -> seat.id().equals(judge.id())).isPresent())
					.toList(),
				substitute, takenOver,
				panel.standing()
					.stream()
					.map((change) -> new SegmentPanel.Change(change.seat(), panel.label(change.seat()),
							this.panels.words(change, panel),
							new PanelChanges.SegmentPanel.Change.Made(change.madeBy(), change.madeAt()),
							change.kind().isAboutWholeSegment() && canTakeBack(change, all), canReturn(change)))
					.toList(),
				lacking(all, panel));
	}

	/** Nothing may be built upon it: no card that was closed after it. */
	private static boolean canTakeBack(PanelChange change, List<Performance> all) {
		return all.stream()
			.filter((performance) -> !change.isOf(performance.id()))
			.noneMatch((performance) -> performance.wasClosedAfter(change.madeAt()));
	}

	private static SeatView seat(CountingPanel panel, SeatId judge) {
		return panel.judge(judge).orElseThrow(() -> NotFoundException.of("seat", judge));
	}

	static int next(CountingPanel panel) {
		return panel.changes().stream().mapToInt(PanelChange::sequence).max().orElse(0) + 1;
	}

	private static String named(SeatView seat) {
		return (seat.official() != null) ? seat.label() + " (" + seat.official().name() + ")" : seat.label();
	}

	/**
	 * The panel of a segment as the referee decides about it.
	 *
	 * @param counting the seats whose cards count, in the order of the judges' numbers
	 * @param judges the judges' seats whose own cards count
	 * @param substitute the substitute's seat, {@code null} where nobody sits there
	 * @param takenOver the label of the seat that the substitute has taken over, empty
	 * for none
	 * @param changes what differs from the panel as drawn, oldest first
	 * @param lacking the closed cards that the substitute, or a judge who was left out,
	 * has not given; each can be keyed in from paper
	 */
	public record SegmentPanel(List<SeatView> counting, List<SeatView> judges, @Nullable SeatView substitute,
			String takenOver, List<Change> changes, List<Lacking> lacking) {

		public SegmentPanel {
			counting = List.copyOf(counting);
			judges = List.copyOf(judges);
			changes = List.copyOf(changes);
			lacking = List.copyOf(lacking);
		}

		/** Tell whether a substitute could take over a seat. */
		public boolean canTakeOver() {
			return this.substitute != null && this.takenOver.isEmpty();
		}

		/**
		 * A difference from the panel as drawn.
		 *
		 * @param words in one sentence, with the reason
		 * @param canTakeBack whether no card was closed since
		 * @param byRule whether it can be taken back later, too, by a rule that is named
		 */
		public record Change(SeatId seat, String label, Sentence words, Made made, boolean canTakeBack,
				boolean byRule) {

			/** Who decided it, and when. */
			public record Made(String by, Instant at) {
			}

		}

		/**
		 * A card that a seat has not given although it was closed.
		 *
		 * @param team number and name
		 */
		public record Lacking(SeatView seat, PerformanceId performance, String team) {
		}

	}

}
