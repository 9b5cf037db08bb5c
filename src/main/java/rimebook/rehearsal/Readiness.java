package rimebook.rehearsal;

import java.util.List;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.entries.Entries;
import rimebook.panels.Panels;
import rimebook.panels.SeatPlace;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.wording.Sentence;

/** What can be rehearsed of the competitions as they stand now, and what is lacking. */
@Component
@Profile("!" + RehearsalMark.PROFILE)
class Readiness {

	private final Competitions competitions;

	private final Entries entries;

	private final Panels panels;

	private final SegmentRun run;

	Readiness(Competitions competitions, Entries entries, Panels panels, SegmentRun run) {
		this.competitions = competitions;
		this.entries = entries;
		this.panels = panels;
		this.run = run;
	}

	/** Every competition, with its events. */
	List<Competition> all() {
		return this.competitions.all().stream().map(this::of).toList();
	}

	/** One of them. */
	Competition of(CompetitionView competition) {
		return new Competition(competition,
				this.competitions.events(competition.id())
					.stream()
					.filter((event) -> !event.isCancelled())
					.map((event) -> event(competition, event))
					.toList());
	}

	private Event event(CompetitionView competition, EventView event) {
		List<SegmentView> left = event.segments()
			.stream()
			.filter((segment) -> !segment.isCancelled() && !isOver(segment))
			.toList();
		return new Event(event.name(), left.stream().map(SegmentView::name).toList(),
				lacking(competition, event, left));
	}

	private Sentence lacking(CompetitionView competition, EventView event, List<SegmentView> left) {
		if (!competition.state().isOpenToChange() || left.isEmpty()) {
			return Sentence.of("rehearsal.all-judged");
		}
		if (competition.state() == CompetitionState.PLANNED
				|| this.entries.ofEvent(event.id()).stream().noneMatch(EntryView::isEntered)) {
			return Sentence.of("rehearsal.no-entries");
		}
		List<SeatPlace> empty = this.panels.missing(event.id());
		if (!empty.isEmpty()) {
			return Sentence.of("rehearsal.no-panel", String.join(", ", empty.stream().map(SeatPlace::label).toList()));
		}
		return Sentence.NONE;
	}

	/** Tell whether cards of a real segment may come at any moment. */
	boolean isRealSegmentOpen() {
		return this.competitions.all()
			.stream()
			.filter((competition) -> competition.state() == CompetitionState.RUNNING)
			.flatMap((competition) -> this.competitions.events(competition.id()).stream())
			.flatMap((event) -> event.segments().stream())
			.anyMatch((segment) -> !segment.isCancelled() && isOpen(segment));
	}

	private boolean isOpen(SegmentView segment) {
		List<PerformanceView> all = this.run.performances(segment.id());
		return !all.isEmpty() && all.stream().anyMatch((one) -> !one.status().isDone());
	}

	private boolean isOver(SegmentView segment) {
		List<PerformanceView> all = this.run.performances(segment.id());
		return !all.isEmpty() && all.stream().allMatch((one) -> one.status().isDone());
	}

	/** A competition to choose. */
	record Competition(CompetitionView competition, List<Event> events) {

		/** Tell whether there is something to rehearse. */
		public boolean isPossible() {
			return this.events.stream().anyMatch(Event::isReady);
		}

	}

	/**
	 * One of its events.
	 *
	 * @param left the segments that are not over
	 * @param lacking why it cannot be rehearsed; {@link Sentence#NONE} where it can
	 */
	record Event(String name, List<String> left, Sentence lacking) {

		public boolean isReady() {
			return this.lacking.isEmpty();
		}

	}

}
