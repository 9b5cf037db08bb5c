package rimebook.performances;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.StillOpen;
import rimebook.entries.EntryEvent;
import rimebook.entries.EntryId;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * A team that withdraws leaves its gap in every segment it has not skated yet, but for
 * one that is cancelled; if the withdrawal is taken back, it waits there under its number
 * again.
 */
@Component
class WithdrawalListener {

	private final PerformanceRepository performances;

	private final ApplicationEventPublisher events;

	private final StillOpen stillOpen;

	WithdrawalListener(PerformanceRepository performances, ApplicationEventPublisher events, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.performances = performances;
		this.events = events;
	}

	/** Before others look at what became of the team. */
	@EventListener
	@Order(0)
	void on(EntryEvent.Withdrawn withdrawn) {
		this.performances.findByEntry(withdrawn.entry().value())
			.stream()
			.filter((performance) -> !performance.status().isDone())
			.filter((performance) -> this.stillOpen.refusal(performance.segment()).isEmpty())
			.forEach((performance) -> leaveGap(performance, withdrawn.entry(), withdrawn.change()));
	}

	private void leaveGap(Performance performance, EntryId entry, AuditedChange cause) {
		if (performance.takesCards()) {
			throw new ConflictException("team-on-ice", Sentence.of("performances.team-on-ice"));
		}
		performance.endWith(entry.value(), PerformanceStatus.WITHDRAWN, cause.reason());
		this.events.publishEvent(
				new PerformanceEvent.Ended(performance.id(), performance.segment(), PerformanceStatus.WITHDRAWN,
						AuditedChange.of(cause.actor(), "performance", performance.id(), "performance.ended")
							.from("waiting", "withdrawn")
							.because(cause.reason())));
	}

	@EventListener
	@Order(0)
	void on(EntryEvent.Reinstated back) {
		this.performances.findByEntry(back.entry().value())
			.stream()
			.filter((performance) -> performance.endedWith(back.entry().value()))
			.forEach((performance) -> this.events.publishEvent(
					PerformanceEvent.StatusCorrected.followed(performance, PerformanceStatus.WAITING, back.change())));
	}

}
