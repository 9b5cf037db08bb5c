package rimebook.performances;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;

/**
 * A programme that is skated again. Where only the re-skate counts it is a performance of
 * its own under the same starting number: nothing that was sent or noted for the first
 * skate can be closed, sent again or counted by accident, and all of it stays on record.
 * A team that skates again, or is interrupted, may wait while others skate.
 */
@Service
public class Reskates {

	private final PerformanceRepository performances;

	private final HeldSegment.Source segments;

	private final PerformanceProgress progress;

	private final SkatingClock clocks;

	private final PanelNotices notices;

	private final Acts acts;

	Reskates(PerformanceRepository performances, HeldSegment.Source segments, PerformanceProgress progress,
			SkatingClock clocks, PanelNotices notices, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.segments = segments;
		this.progress = progress;
		this.clocks = clocks;
		this.notices = notices;
	}

	/** Set the skate on the ice aside and put the whole re-skate in its place. */
	public void begin(PerformanceId id, Actor actor) {
		Performance first = this.performances.findLockedById(id.value())
			.orElseThrow(() -> NotFoundException.of("performance", id));
		String marking = Marking.RESKATED_ONLY.words();
		first.setAside("Re-skate: " + marking);
		int skate = this.performances.countBySegmentAndEntry(first.segment().value(), first.entry().value()) + 1;
		Performance again = Performance.again(this.acts.nextId(), first, skate, this.acts.now());
		this.performances.save(again);
		this.acts.publish(line(first, "performance.set-aside", actor).from(soFar(first), "set aside; skated again")
			.because(marking));
		this.notices.tell(again.id(), "Re-skate from the beginning: " + marking, actor);
	}

	private String soFar(Performance first) {
		List<String> sent = this.progress.soFar(first.segment()).apply(first);
		return sent.isEmpty() ? "on the ice, nothing sent" : String.join("\n", sent);
	}

	/**
	 * Take the order of a whole re-skate back: what was set aside counts again, and its
	 * clock stands as before the order.
	 * @param version the version of the re-skate that the referee was looking at
	 * @throws rimebook.shared.ConflictException if it is not on the ice, is no re-skate,
	 * its clock was started or something was sent for it
	 */
	@Transactional
	public void takeBack(PerformanceId id, int version, Actor actor) {
		Performance again = this.segments.of(id, version).performance();
		PerformanceId firstId = again.againFor();
		if (firstId == null || !again.isOnIce()) {
			throw PerformanceRefusals.notSkatingAgain(again);
		}
		this.progress.requireNotBegun(again);
		Performance first = this.performances.findLockedById(firstId.value())
			.orElseThrow(() -> NotFoundException.of("performance", firstId));
		again.setAside("The re-skate was taken back.");
		first.countAgain();
		this.clocks.takeBackReskate(first.view(), actor);
		this.notices.tell(first.id(), "Taken back: re-skate; this card counts again", actor);
		this.acts.publish(line(first, "performance.counts-again", actor).from("set aside", "on the ice"));
	}

	/**
	 * Let other teams skate first. What was marked, called and deducted so far stays with
	 * the performance; it goes on when it is called again.
	 * @param version the version of the performance that the referee was looking at
	 * @param reason why, up to 500 characters
	 * @throws rimebook.shared.ConflictException unless the team is on the ice, and
	 * interrupted or about to skate again
	 */
	@Transactional
	public void letWait(PerformanceId id, int version, String reason, Actor actor) {
		Performance performance = this.segments.of(id, version).performance();
		String why = Required.text("waitReason", reason, 500);
		if (!performance.isOnIce() || !this.clocks.canWait(performance.view())) {
			throw PerformanceRefusals.cannotWait(performance);
		}
		performance.postpone(why);
		this.acts.publish(new PerformanceEvent.CallTakenBack(id, performance.segment(),
				line(performance, "performance.waits", actor).from("on the ice", "waiting while others skate")
					.because(why)));
	}

	/**
	 * List the skates of a segment that do not count, with all that was sent and noted.
	 */
	@Transactional(readOnly = true)
	public List<SetAside> ofSegment(SegmentId segment) {
		List<Performance> setAside = this.performances.findSetAside(segment.value());
		if (setAside.isEmpty()) {
			return List.of();
		}
		Function<Performance, List<String>> soFar = this.progress.soFar(segment);
		return setAside.stream()
			.map((one) -> new SetAside(one.startNumber(), one.entry(), one.skate(), one.statusReason(),
					Objects.requireNonNull(one.view().turn().calledAt()), soFar.apply(one)))
			.toList();
	}

	private static AuditedChange line(Performance performance, String action, Actor actor) {
		return AuditedChange.of(actor, "performance", performance.id(), action);
	}

	/**
	 * A skate that does not count, since the whole programme is skated again.
	 *
	 * @param skate 1 for the first, one more for each time
	 * @param reason what the judges mark instead
	 * @param calledAt when it was called on the ice, UTC
	 * @param lines what was sent and noted for it, one sentence a card or list; empty for
	 * nothing
	 */
	public record SetAside(int startNumber, EntryId entry, int skate, String reason, Instant calledAt,
			List<String> lines) {

		public SetAside {
			lines = List.copyOf(lines);
		}

	}

	/**
	 * What the judges mark when a programme is skated again; the rulebook in force says.
	 */
	public enum Marking {

		/** Only the programme that is skated again. */
		RESKATED_ONLY("mark only the re-skated programme"),

		/** What came before the interruption stands as first skated. */
		AS_FIRST_SKATED("the part before the interruption stays as first marked");

		private final String words;

		Marking(String words) {
			this.words = words;
		}

		/** What is marked, as the panel is told. */
		public String words() {
			return this.words;
		}

	}

}
