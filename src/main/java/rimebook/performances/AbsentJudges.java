package rimebook.performances;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Closes cards although a judge's is missing. In placement judging the seat is then left
 * out of the whole segment with all its cards, since a panel is never mixed; in points
 * judging its marks of that performance are absent, and each mean is over those given.
 */
@Service
public class AbsentJudges {

	private final HeldSegment.Source segments;

	private final CountingPanels panels;

	private final PanelChangeRepository changes;

	private final CardBooks books;

	private final SkatingClock clocks;

	private final Acts acts;

	AbsentJudges(HeldSegment.Source segments, CountingPanels panels, PanelChangeRepository changes, CardBooks books,
			SkatingClock clocks, Acts acts) {
		this.acts = acts;
		this.segments = segments;
		this.panels = panels;
		this.changes = changes;
		this.books = books;
		this.clocks = clocks;
	}

	/**
	 * Close the cards of a performance without those of the absent judges; its standing
	 * is published in the same transaction and says so.
	 * @throws RuleViolationException naming the field: {@code absent-missing} if no seat
	 * is named, {@code card-is-there} for a seat whose card is there; {@code panel-empty}
	 * if no card would be left; {@code cards-missing} while something else is missing
	 * @throws ConflictException as {@link SegmentRun#close}
	 */
	@Transactional
	public void close(CloseWithout closing, Actor actor) {
		HeldSegment held = this.segments.of(closing.performance(), closing.version());
		held.requireNoneReopened();
		Performance performance = held.performance();
		Word word = new Word(Required.text("rule", closing.rule(), 120), Required.text("reason", closing.reason(), 500),
				actor);
		CountingPanel panel = this.panels.of(performance.segment());
		List<SeatView> absent = absent(closing, panel, performance);
		leaveOut(absent, panel, performance, word);
		this.clocks.requireAtRest(performance.view());
		String before = PerformanceRefusals.words(performance.status());
		performance.close(this.acts.now());
		CountingPanel after = this.panels.of(performance.segment());
		String without = absent.stream().map(SeatView::label).collect(Collectors.joining(", "));
		this.acts.publish(
				new PerformanceEvent.CardsClosed(performance.id(), performance.segment(), words(panel, after), after,
						AuditedChange.of(actor, "performance", performance.id(), "cards.closed-without")
							.from(before,
									this.books.of(performance.segment()).inWords(performance.view(), after)
											+ "; without " + without + " (" + word.rule() + ")")
							.because(word.reason())));
	}

	private List<SeatView> absent(CloseWithout closing, CountingPanel panel, Performance performance) {
		CardBook book = this.books.of(performance.segment());
		List<SeatView> absent = panel.seats().stream().filter((seat) -> closing.absent().contains(seat.id())).toList();
		if (absent.isEmpty()) {
			throw new RuleViolationException("absent-missing", "absent", Sentence.of("performances.absent-missing"));
		}
		absent.stream()
			.filter((seat) -> book.missing(performance.view(), seat).isEmpty())
			.findFirst()
			.ifPresent((seat) -> {
				throw new RuleViolationException("card-is-there", "absent",
						Sentence.of("performances.card-is-there", seat.spoken()));
			});
		if (absent.size() == panel.seats().size()) {
			throw new RuleViolationException("panel-empty", "absent", Sentence.of("performances.panel-empty"));
		}
		book.requireComplete(performance.view(),
				panel.seats().stream().filter((seat) -> !absent.contains(seat)).toList());
		return absent;
	}

	private void leaveOut(List<SeatView> absent, CountingPanel panel, Performance performance, Word word) {
		SegmentId segment = performance.segment();
		boolean oneCard = this.books.of(segment).allowsAbsentCard();
		int sequence = PanelChanges.next(panel);
		for (SeatView seat : absent) {
			// One card is absent, whoever's it is; else the whole seat is left out.
			SeatView about = oneCard ? seat : panel.replacedBy(seat.id()).orElse(seat);
			this.changes
				.save(new PanelChange(this.acts.nextId(), segment, sequence,
						new PanelChange.Decided(oneCard ? PanelChange.Kind.EXCUSED : PanelChange.Kind.LEFT_OUT,
								about.id(), word.reason()),
						word.actor(), this.acts.now())
					.about(performance.id(), word.rule()));
			sequence++;
		}
	}

	/** What the new standing says: the changes that were just made. */
	private String words(CountingPanel before, CountingPanel after) {
		return after.standing()
			.stream()
			.filter((change) -> change.sequence() >= PanelChanges.next(before))
			.map((change) -> this.panels.words(change, after).english())
			.collect(Collectors.joining(" "));
	}

	/** The referee's word that a judge is left out: by which rule, and why. */
	private record Word(String rule, String reason, Actor actor) {
	}

	/**
	 * The closing of cards although some are missing.
	 *
	 * @param version the version of the performance the referee was looking at
	 * @param absent the seats whose card will not come
	 * @param rule by which rule, such as its number in the rulebook in force, up to 120
	 * characters
	 * @param reason why, up to 500 characters
	 */
	public record CloseWithout(PerformanceId performance, int version, Set<SeatId> absent, String rule, String reason) {

		public CloseWithout {
			absent = Set.copyOf(absent);
		}

	}

}
