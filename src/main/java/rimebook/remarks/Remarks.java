package rimebook.remarks;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.performances.PanelNotices;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.SkatingClock;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;

/**
 * Remarks of the referee for the panel, such as a fall: every judge's card shows them.
 */
@Service
public class Remarks implements PanelNotices {

	private final RemarkRepository remarks;

	private final PerformanceRegister performances;

	private final SkatingClock clocks;

	private final Acts acts;

	Remarks(RemarkRepository remarks, PerformanceRegister performances, SkatingClock clocks, Acts acts) {
		this.acts = acts;
		this.remarks = remarks;
		this.performances = performances;
		this.clocks = clocks;
	}

	/**
	 * Note something for the panel.
	 * @param text up to 500 characters
	 */
	@Transactional
	public void note(PerformanceId id, RemarkKind kind, String text, Actor actor) {
		note(id, kind, text, null, actor);
	}

	@Override
	@Transactional
	public void tell(PerformanceId performance, String words, Actor actor) {
		note(performance, RemarkKind.ICE, words, actor);
	}

	/**
	 * Note a remark on what the clock found; it is taken back with the touch that it
	 * rests on.
	 * @param text up to 500 characters
	 * @param touch which touch, by the time of the finding; {@code null} for none
	 * @throws rimebook.shared.ConflictException {@code stale-version} if that touch was
	 * taken back meanwhile
	 */
	@Transactional
	public void note(PerformanceId id, RemarkKind kind, String text, @Nullable Instant touch, Actor actor) {
		PerformanceView performance = this.performances.holdOpen(id);
		String words = Required.text("text", text, 500);
		this.clocks.requireFound(performance, touch);
		Remark remark = new Remark(this.acts.nextId(), id, kind, words, actor, this.acts.now()).restingOn(touch);
		this.remarks.save(remark);
		this.acts.publish(AuditedChange.of(actor, "performance", id, "performance.remark").to(remark.inWords()));
	}

	/** List the remarks on a performance, oldest first. */
	@Transactional(readOnly = true)
	public List<RemarkView> ofPerformance(PerformanceId id) {
		return this.remarks.findByPerformanceOrderByNotedAt(id.value()).stream().map(Remark::view).toList();
	}

	/**
	 * A remark of the referee to the panel.
	 *
	 * @param touch the touch of the clock that it tells of, by the time of the finding;
	 * {@code null} for any other remark
	 */
	public record RemarkView(UUID id, RemarkKind kind, String text, String notedBy, Instant notedAt,
			@Nullable Instant touch) {
	}

	/**
	 * What the referee tells the panel about a performance. Nothing is subtracted by the
	 * service: in placement judging each judge's mark already holds the deduction (common
	 * practice; the referee informs the panel).
	 */
	public enum RemarkKind {

		/** A fall, with how many skaters. */
		FALL,
		/** Programme too long or too short, late start. */
		TIME,
		/** Costume or prop. */
		COSTUME,
		/** A movement that is not permitted. */
		ELEMENT,
		/** The programme was broken off, goes on or is skated again. */
		ICE,
		/** Anything else the panel must know. */
		OTHER

	}

}
