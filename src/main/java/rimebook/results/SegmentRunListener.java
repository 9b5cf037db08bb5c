package rimebook.results;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.competition.Cancellations;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.SegmentRun;
import rimebook.performances.SkatingClock;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/**
 * Hears the run of a segment in the transaction of each act, so that a closed card
 * without its standing cannot exist.
 */
@Component
class SegmentRunListener {

	private final HeldResult.Source results;

	private final StandingUpdate update;

	private final SegmentRun run;

	private final Entries entries;

	private final ApplicationEventPublisher events;

	SegmentRunListener(HeldResult.Source results, StandingUpdate update, SegmentRun run, Entries entries,
			ApplicationEventPublisher events) {
		this.results = results;
		this.update = update;
		this.run = run;
		this.entries = entries;
		this.events = events;
	}

	@EventListener
	void on(PerformanceEvent.SegmentOpened opened) {
		this.results.begin(opened.segment());
		this.events.publishEvent(new IceChanged(opened.segment()));
	}

	@EventListener
	void on(PerformanceEvent.Called called) {
		this.results.of(called.segment()).result().takesTheIce(called.entry());
		this.events.publishEvent(new IceChanged(called.segment()));
	}

	@EventListener
	void on(PerformanceEvent.CallTakenBack back) {
		this.results.of(back.segment()).result().leavesTheIce(entry(back.performance()));
		this.events.publishEvent(new IceChanged(back.segment()));
	}

	/** Public is only that the team is broken off, never why. */
	@EventListener
	void on(SkatingClock.ProgrammeBroken broken) {
		this.results.of(broken.segment()).result().interrupted(broken.interrupted());
		this.events.publishEvent(new IceChanged(broken.segment()));
	}

	@EventListener
	void on(PerformanceEvent.CardsClosed closed) {
		HeldResult held = this.results.of(closed.segment());
		held.result().leavesTheIce(entry(closed.performance()));
		this.update.publish(held, closed.panel(), new VersionWriter.Publication(ResultVersion.Cause.CARDS_CLOSED,
				Sentence.said(closed.words()), closed.change().actor()));
	}

	/** Nothing is published: the last version stays until the cards are closed again. */
	@EventListener
	void on(PerformanceEvent.CardsReopened reopened) {
		this.results.of(reopened.segment()).result().change();
	}

	@EventListener
	void on(PerformanceEvent.Ended ended) {
		HeldResult held = this.results.of(ended.segment());
		SegmentResult result = held.result();
		result.change();
		result.leavesTheIce(entry(ended.performance()));
		this.update.publish(held, ResultVersion.Cause.STATUS, Sentence.said(ended.change().reason()),
				ended.change().actor());
	}

	@EventListener
	void on(PerformanceEvent.PanelChanged changed) {
		HeldResult held = this.results.of(changed.segment());
		held.result().change();
		if (this.update.hasStanding(changed.segment())) {
			this.update.publish(held, ResultVersion.Cause.PANEL, Sentence.said(changed.words()),
					changed.change().actor());
		}
	}

	/** A standing that tells only of teams without marks has their numbers, too. */
	@EventListener
	void on(PerformanceEvent.Renumbered renumbered) {
		HeldResult held = this.results.of(renumbered.segment());
		held.result().change();
		if (this.update.hasStanding(renumbered.segment())) {
			this.update.publish(held, ResultVersion.Cause.STATUS, Sentence.of("note.drawn-again"),
					renumbered.change().actor());
		}
		this.events.publishEvent(new IceChanged(renumbered.segment()));
	}

	/** The event's result is made of the segments that take place. */
	@EventListener
	void on(Cancellations.Changed changed) {
		EventView event = changed.event();
		SegmentView segment = changed.segment();
		if (segment != null) {
			Sentence note = changed.reason().isEmpty() ? Sentence.of("note.takes-place", segment.name())
					: Sentence.of("note.cancelled", segment.name(), changed.reason());
			this.update.publishEvent(event, note, changed.change().actor());
		}
		event.segments().forEach((each) -> this.events.publishEvent(new IceChanged(each.id())));
	}

	@EventListener
	void on(PerformanceEvent.StatusCorrected corrected) {
		HeldResult held = this.results.of(corrected.segment());
		SegmentResult result = held.result();
		result.change();
		if (corrected.status() == PerformanceStatus.ON_ICE) {
			result.takesTheIce(corrected.entry());
		}
		String team = this.entries.entry(corrected.entry()).team().name();
		this.update.publish(held, ResultVersion.Cause.CORRECTED, Sentence.of("note.status", team, corrected.said()),
				corrected.change().actor());
		this.events.publishEvent(new IceChanged(corrected.segment()));
	}

	private EntryId entry(PerformanceId performance) {
		return this.run.performance(performance).entry();
	}

	@EventListener
	void on(PerformanceEvent.CardCorrected corrected) {
		HeldResult held = this.results.of(corrected.segment());
		held.result().change();
		Actor actor = corrected.change().actor();
		String team = this.entries.entry(corrected.entry()).team().name();
		this.update.publish(held, ResultVersion.Cause.CORRECTED,
				Sentence.of("note.card", team, corrected.said(), corrected.because()), actor);
	}

}
