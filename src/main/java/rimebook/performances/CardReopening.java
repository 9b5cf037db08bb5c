package rimebook.performances;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;

/**
 * Opens the closed cards of a performance again, for a judge who noticed a slip before
 * anything was built upon it. Closing them once more is {@link SegmentRun#close}.
 */
@Service
public class CardReopening {

	private final HeldSegment.Source segments;

	private final LaterSegments later;

	private final CardBooks books;

	private final CountingPanels panels;

	private final PanelChangeRepository changes;

	private final Acts acts;

	CardReopening(HeldSegment.Source segments, LaterSegments later, CardBooks books, CountingPanels panels,
			PanelChangeRepository changes, Acts acts) {
		this.acts = acts;
		this.segments = segments;
		this.later = later;
		this.books = books;
		this.panels = panels;
		this.changes = changes;
	}

	/**
	 * Open the cards of a performance again. Its judges may change them, also while the
	 * next team is on the ice; the published standing stays until they are closed again,
	 * and no other cards of the segment are closed before.
	 * @param version the version of the performance the referee was looking at
	 * @param reason why, up to 500 characters
	 * @throws ConflictException if the cards are not closed; {@code later-cards-closed}
	 * or {@code later-segment-open} once something was built upon them;
	 * {@code result-official} once the result is signed
	 */
	@Transactional
	public void reopen(PerformanceId id, int version, String reason, Actor actor) {
		HeldSegment held = this.segments.of(id, version);
		Performance performance = held.performance();
		String why = Required.text("reason", reason, 500);
		held.requireLastClosed();
		this.later.requireNoneOpen(performance.segment());
		performance.reopen(why);
		CountingPanel panel = this.panels.of(performance.segment());
		String closed = this.books.of(performance.segment()).inWords(performance.view(), panel);
		expectExcused(performance, panel, why, actor);
		this.acts.publish(new PerformanceEvent.CardsReopened(id, performance.segment(),
				AuditedChange.of(actor, "performance", id, "cards.reopened").from(closed, "open again").because(why)));
	}

	/** A card that was closed without is expected once more. */
	private void expectExcused(Performance performance, CountingPanel panel, String why, Actor actor) {
		int sequence = PanelChanges.next(panel);
		for (PanelChange change : panel.standing()) {
			if (change.kind() == PanelChange.Kind.EXCUSED && change.isOf(performance.id())) {
				this.changes.save(new PanelChange(this.acts.nextId(), performance.segment(), sequence,
						new PanelChange.Decided(PanelChange.Kind.EXCUSE_OVER, change.seat(), why), actor,
						this.acts.now())
					.about(performance.id(), ""));
				sequence++;
			}
		}
	}

}
