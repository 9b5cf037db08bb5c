package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.ClosedCards;
import rimebook.performances.CountingPanel;
import rimebook.performances.PerformanceView;
import rimebook.published.Standing;
import rimebook.tabulation.TabulationException;

/** Composes the next standing of a segment and of its event, writing nothing. */
@Component
class StandingDrafts {

	private final Standings standings;

	private final Competitions competitions;

	private final ClosedCards cards;

	private final List<MethodStandings> methods;

	private final EventFieldReader fields;

	private final Entries entries;

	StandingDrafts(Standings standings, Competitions competitions, ClosedCards cards, List<MethodStandings> methods,
			EventFieldReader fields, Entries entries) {
		this.standings = standings;
		this.competitions = competitions;
		this.cards = cards;
		this.methods = methods;
		this.fields = fields;
		this.entries = entries;
	}

	/** Compose both standings as everything is now. */
	Draft now(SegmentId id, List<PerformanceView> performances) {
		return of(id, this.cards.of(id, performances), EventFieldReader.toSkate(performances), Supposition.NONE);
	}

	/** The same for whoever has read whose cards count. */
	Draft now(SegmentId id, List<PerformanceView> performances, CountingPanel panel) {
		return of(id, this.cards.of(id, performances, panel), EventFieldReader.toSkate(performances), Supposition.NONE);
	}

	/** Compose both standings as these cards would make them. */
	Draft of(SegmentId id, ClosedCards.ClosedSegment closed) {
		return of(id, closed, this.fields.toSkate(id), Supposition.NONE);
	}

	/**
	 * Compose both standings.
	 * @param closed what is tabulated
	 * @param toSkate the entries still to skate the segment, in their order
	 * @param supposed what would be otherwise than now
	 * @throws rimebook.shared.RuleViolationException with the code of the tabulation if
	 * these cards cannot be tabulated
	 */
	Draft of(SegmentId id, ClosedCards.ClosedSegment closed, List<EntryId> toSkate, Supposition supposed) {
		try {
			return compose(id, closed, toSkate, supposed);
		}
		catch (TabulationException ex) {
			EventId event = this.competitions.eventOf(id).id();
			throw TeamNames.TabulationAnswer.of(ex, TeamNames.of(this.entries.ofEvent(event)).byEntry());
		}
	}

	private Draft compose(SegmentId id, ClosedCards.ClosedSegment closed, List<EntryId> toSkate, Supposition supposed) {
		EventView event = counted(id);
		CompetitionView competition = this.competitions.competition(event.competition());
		Standing before = this.standings.latest(id).map(ResultVersion::standing).orElse(null);
		EventView counted = event.countedBy(closed.panel().judges().size());
		MethodStandings method = of(event);
		List<EntryView> entries = this.entries.ofEvent(event.id());
		MethodStandings.SegmentFacts facts = new MethodStandings.SegmentFacts(competition, counted, entries,
				event.segment(id),
				new MethodStandings.SegmentField(closed.performances(), closed.started() + toSkate.size()), before);
		Standing.Venue venue = Standing.Venue.of(competition.facts());
		Standing segment = method.ofSegment(facts).with(closed.panel()).with(venue);
		Optional<ResultVersion> eventBefore = this.standings.latest(event.id());
		Standing wholeBefore = eventBefore.map(ResultVersion::standing).orElse(null);
		List<@Nullable Standing> segments = segments(event, id, segment, supposed);
		MethodStandings.EventFacts whole = new MethodStandings.EventFacts(competition, event, entries, segments,
				supposed.of(MethodStandings.EventField.of(entries, this.fields.toSkate(event, segments, id, toSkate))),
				wholeBefore);
		Standing.Outlook outlook = method.outlook(facts, toSkate, whole);
		return new Draft(event, segment.with(outlook), method.ofEvent(whole).with(outlook).with(venue), before,
				wholeBefore, eventBefore.map(ResultVersion::number).orElse(0));
	}

	/** The last segment of an event that has a standing; there is one. */
	SegmentId lastBegun(EventId id) {
		return this.competitions.event(id)
			.held()
			.segments()
			.stream()
			.map(SegmentView::id)
			.filter((segment) -> this.standings.latest(segment).isPresent())
			.reduce((earlier, later) -> later)
			.orElseThrow();
	}

	private MethodStandings of(EventView event) {
		return this.methods.stream().filter((method) -> method.isFor(event)).findFirst().orElseThrow();
	}

	/** Nothing is published of a cancelled segment, but a preview may look at one. */
	private EventView counted(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return event.segment(id).isCancelled() ? event : event.held();
	}

	/**
	 * Put the event together anew from what was published of its segments; empty where
	 * none has a standing yet.
	 */
	Optional<Draft> whole(EventView held) {
		return combined(held, held.segments());
	}

	/**
	 * The standing of the event with which a segment begins, whatever was published of
	 * that segment and of later ones; empty where none before has a standing.
	 */
	Optional<Standing> before(EventView held, SegmentId segment) {
		return combined(held, held.previousSegments(segment)).map(Draft::event);
	}

	private Optional<Draft> combined(EventView held, List<SegmentView> counted) {
		List<@Nullable Standing> segments = new ArrayList<>();
		held.segments()
			.forEach((segment) -> segments.add(counted.contains(segment)
					? this.standings.latest(segment.id()).map(ResultVersion::standing).orElse(null) : null));
		if (segments.stream().allMatch(Objects::isNull)) {
			return Optional.empty();
		}
		Optional<ResultVersion> before = this.standings.latest(held.id());
		Standing standing = before.map(ResultVersion::standing).orElse(null);
		List<EntryView> entries = this.entries.ofEvent(held.id());
		CompetitionView competition = this.competitions.competition(held.competition());
		Standing whole = of(held)
			.ofEvent(new MethodStandings.EventFacts(competition, held, entries, segments,
					MethodStandings.EventField.of(entries, this.fields.toSkate(held, segments)), standing))
			.with(Standing.Venue.of(competition.facts()));
		return Optional.of(new Draft(held, whole, whole, null, standing, before.map(ResultVersion::number).orElse(0)));
	}

	private List<@Nullable Standing> segments(EventView event, SegmentId changed, Standing standing,
			Supposition supposed) {
		List<@Nullable Standing> all = new ArrayList<>();
		for (SegmentView segment : event.segments()) {
			all.add(segment.id().equals(changed) ? standing
					: this.standings.latest(segment.id())
						.map((latest) -> supposed.of(segment.id(), latest.standing()))
						.orElse(null));
		}
		return all;
	}

	/**
	 * Both standings, with those they follow.
	 *
	 * @param eventNumber the number of the event's newest version, 0 for none
	 */
	record Draft(EventView view, Standing segment, Standing event, @Nullable Standing segmentBefore,
			@Nullable Standing eventBefore, int eventNumber) {
	}

	/**
	 * What would be otherwise than now about one team, besides its performance in the
	 * segment that is looked at.
	 *
	 * @param entry the team's entry, empty for no team
	 * @param leaves whether it would have withdrawn from the event
	 * @param waitsIn the later segments in which it would be still to skate, and is ended
	 * now
	 */
	record Supposition(String entry, boolean leaves, Set<SegmentId> waitsIn) {

		/** Everything as it is. */
		static final Supposition NONE = new Supposition("", false, Set.of());

		Supposition {
			waitsIn = Set.copyOf(waitsIn);
		}

		MethodStandings.EventField of(MethodStandings.EventField field) {
			return this.leaves ? field.without(this.entry) : field.with(this.entry);
		}

		Standing of(SegmentId segment, Standing standing) {
			return this.waitsIn.contains(segment) ? standing.without(this.entry) : standing;
		}

	}

}
