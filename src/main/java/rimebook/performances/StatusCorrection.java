package rimebook.performances;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryEvent;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Sets afterwards how a performance came through: that marks do not count after all, that
 * they do, that a team still skates which was ended wrongly. Who may ask for it and who
 * approves it is decided by protests. The entry and later performances of the team
 * follow.
 */
@Service
public class StatusCorrection implements Amending<StatusCorrection.StatusAmendment> {

	private final PerformanceRepository performances;

	private final StatusChecks checks;

	private final EndedEntries entries;

	private final ApplicationEventPublisher events;

	StatusCorrection(PerformanceRepository performances, StatusChecks checks, EndedEntries entries,
			ApplicationEventPublisher events) {
		this.performances = performances;
		this.checks = checks;
		this.entries = entries;
		this.events = events;
	}

	/** What a performance could be set to now; empty while it simply goes on. */
	@Transactional(readOnly = true)
	public List<PerformanceStatus> offers(PerformanceId id) {
		Performance performance = found(this.performances.findById(id.value()), id);
		return Stream.of(PerformanceStatus.values())
			.filter((next) -> this.checks.refusal(performance, next).isEmpty())
			.toList();
	}

	/**
	 * The other segments in which the team does not start because of this performance, or
	 * because it has withdrawn: there it would wait again.
	 */
	@Transactional(readOnly = true)
	public Set<SegmentId> following(PerformanceId id) {
		Performance performance = found(this.performances.findById(id.value()), id);
		UUID entry = performance.entry().value();
		return this.performances.findByEntry(entry)
			.stream()
			.filter((other) -> other != performance)
			.filter((other) -> other.endedWith(id.value()) || other.endedWith(entry))
			.map(Performance::segment)
			.collect(Collectors.toSet());
	}

	@Override
	public Map<String, Class<? extends StatusAmendment>> kinds() {
		return Map.of("status", StatusAmendment.class);
	}

	/** Why a performance cannot be set from the one status to the other now. */
	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(Amendment.SupposedChange<StatusAmendment> change, StatusAmendment expected) {
		Performance performance = found(this.performances.findById(change.performance().value()), change.performance());
		return ((performance.status() == expected.status())
				? this.checks.refusal(performance, change.amendment().status())
				: Optional.of(ConflictException.stale("performance")))
			.map(ConflictException::sentence);
	}

	/**
	 * Check that a performance could be set to that status.
	 * @return its status now
	 * @throws ConflictException saying what stands against it
	 */
	@Override
	@Transactional(readOnly = true)
	public StatusAmendment check(Amendment.SupposedChange<StatusAmendment> change) {
		Performance performance = found(this.performances.findById(change.performance().value()), change.performance());
		this.checks.require(performance, change.amendment().status());
		return new StatusAmendment(performance.status());
	}

	/** How a team came through is also said of its entry, which is held first. */
	@Override
	@Transactional
	public void hold(PerformanceId id) {
		this.entries.hold(id);
	}

	/**
	 * Set how a performance came through.
	 * @throws ConflictException as for {@link #check}, and if its status is no longer the
	 * expected one
	 */
	@Override
	@Transactional
	public void apply(Amendment.SupposedChange<StatusAmendment> change, StatusAmendment expected, Approval approval) {
		PerformanceId id = change.performance();
		PerformanceStatus next = change.amendment().status();
		Actor actor = approval.actor();
		Performance performance = found(this.performances.findLockedById(id.value()), id);
		ConflictException.requireSeen("performance", expected.status(), performance.status());
		this.checks.require(performance, next);
		PerformanceEvent.StatusCorrected corrected = PerformanceEvent.StatusCorrected.of(performance, next,
				AuditedChange.of(actor, "performance", id, "performance.status-corrected").because(approval.reason()));
		Optional<EntryEvent.Reinstated> back = this.entries.followBack(performance.entry(), expected.status(),
				approval.reason(), actor);
		this.events.publishEvent(corrected.by(approval.names()));
		laterFollow(performance, next, corrected.change());
		this.entries.follow(performance.entry(), next, approval.reason(), actor);
		back.ifPresent(this.events::publishEvent);
	}

	/** What was ended because of this one waits again, or ends as this one did. */
	private void laterFollow(Performance performance, PerformanceStatus next, AuditedChange cause) {
		UUID id = performance.id().value();
		this.performances.findByEntry(performance.entry().value()).forEach((other) -> {
			if (other.endedWith(id)) {
				this.events
					.publishEvent(PerformanceEvent.StatusCorrected.followed(other, PerformanceStatus.WAITING, cause));
			}
			if (next.isEndedWithoutMarks() && other.status() == PerformanceStatus.WAITING && other != performance) {
				endAfter(performance, other, cause);
			}
		});
	}

	private void endAfter(Performance performance, Performance other, AuditedChange cause) {
		other.endAfter(performance);
		this.events.publishEvent(new PerformanceEvent.Ended(other.id(), other.segment(), other.status(),
				AuditedChange.of(cause.actor(), "performance", other.id(), "performance.ended")
					.from("waiting", PerformanceRefusals.words(other.status()))
					.because(cause.reason())));
	}

	private static Performance found(Optional<Performance> performance, PerformanceId id) {
		return performance.orElseThrow(() -> NotFoundException.of("performance", id));
	}

	/**
	 * How a team came through a segment.
	 *
	 * @param status withdrawn, not finished or disqualified; closed where its marks shall
	 * count again; waiting or on the ice where it has still to skate
	 */
	public record StatusAmendment(PerformanceStatus status) implements Amendment {

		/** That a team came through so. */
		public static Amendment.SupposedChange<StatusAmendment> on(PerformanceId performance,
				PerformanceStatus status) {
			return new Amendment.SupposedChange<>(performance, null, new StatusAmendment(status));
		}

		@Override
		public Sentence spokenPlace() {
			return Sentence.of("note.place.status");
		}

		@Override
		public Sentence spoken() {
			return this.status.spoken();
		}

		@Override
		public int longestReason() {
			return 500;
		}

	}

}
