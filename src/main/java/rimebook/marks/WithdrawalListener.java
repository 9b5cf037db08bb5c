package rimebook.marks;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.entries.EntryWithdrawn;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;

/** A team that withdraws leaves its gap in every segment it has not skated yet. */
@Component
class WithdrawalListener {

	private final PerformanceRepository performances;

	private final ApplicationEventPublisher events;

	WithdrawalListener(PerformanceRepository performances, ApplicationEventPublisher events) {
		this.performances = performances;
		this.events = events;
	}

	@EventListener
	void on(EntryWithdrawn withdrawn) {
		this.performances.findByEntry(withdrawn.entry().value())
			.stream()
			.filter((performance) -> !performance.status().isDone())
			.forEach((performance) -> leaveGap(performance, withdrawn.change()));
	}

	private void leaveGap(Performance performance, AuditedChange cause) {
		if (performance.takesCards()) {
			throw new ConflictException("team-on-ice",
					"The team is on the ice, or its cards are open again. The referee ends the performance at the stand.");
		}
		performance.end(PerformanceStatus.WITHDRAWN, cause.reason());
		this.events
			.publishEvent(new PerformanceEnded(performance.id(), performance.segment(), PerformanceStatus.WITHDRAWN,
					AuditedChange.of(cause.actor(), "performance", performance.id(), "performance.ended")
						.from("waiting", "withdrawn")
						.because(cause.reason())));
	}

}
