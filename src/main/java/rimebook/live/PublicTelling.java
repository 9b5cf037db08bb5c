package rimebook.live;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;
import rimebook.timetable.plan.Programmed;

/**
 * What the public is told, for rooms that tell it in their own way to people of their
 * own: they see through this what everybody sees, and no more.
 */
@Service
public class PublicTelling {

	private final Competitions competitions;

	private final Published published;

	private final SegmentReader segments;

	private final Standings standings;

	private final ExpectedTimes expected;

	private final MomentWatch watch;

	private final EventReader events;

	PublicTelling(Competitions competitions, Published published, SegmentReader segments, Standings standings,
			ExpectedTimes expected, MomentWatch watch, EventReader events) {
		this.events = events;
		this.competitions = competitions;
		this.published = published;
		this.segments = segments;
		this.standings = standings;
		this.expected = expected;
		this.watch = watch;
	}

	/**
	 * A competition that is public.
	 * @throws NotFoundException if there is none, or it is only planned
	 */
	public CompetitionView competition(CompetitionId id) {
		return this.published.competition(this.competitions.competition(id).slug());
	}

	/**
	 * Something that differs as soon as anything moves that the public is told; costs
	 * next to nothing to ask.
	 */
	public String moment(CompetitionView competition) {
		return Integer.toHexString(this.watch.current(competition.slug()).hashCode());
	}

	/**
	 * Where followers of the competition are told that something moved, within the
	 * application.
	 */
	public static String signals(CompetitionView competition) {
		return "/follow/" + competition.slug() + "/signals";
	}

	/** The segments of a competition in their order, cancelled ones among them. */
	public List<SegmentView> segments(CompetitionView competition) {
		return this.published.events(competition).stream().flatMap((event) -> event.segments().stream()).toList();
	}

	/** The segments that have a team on the ice now, in their order. */
	public List<SegmentId> onIce(CompetitionView competition) {
		return segments(competition).stream()
			.map(SegmentView::id)
			.filter((segment) -> this.standings.result(segment).filter((result) -> result.onIce() != null).isPresent())
			.toList();
	}

	/** The segment on which most eyes are; the first where none was begun. */
	@Transactional(readOnly = true)
	public Optional<SegmentId> watched(CompetitionView competition) {
		List<EventView> events = this.published.events(competition);
		return events.stream()
			.flatMap((event) -> event.segments()
				.stream()
				.filter((segment) -> this.standings.result(segment.id()).isPresent())
				.map((segment) -> this.segments.one(event, segment)))
			.filter((facts) -> facts.cancelled().isEmpty())
			.max(Comparator.comparing((facts) -> facts, SegmentFacts.MOST_WATCHED))
			.map((facts) -> facts.segment().id())
			.or(() -> events.stream()
				.flatMap((event) -> event.segments().stream())
				.filter((segment) -> !segment.isCancelled())
				.findFirst()
				.or(() -> events.stream().flatMap((event) -> event.segments().stream()).findFirst())
				.map(SegmentView::id));
	}

	/**
	 * What is told of a segment.
	 * @throws NotFoundException if the competition has no such segment
	 */
	@Transactional(readOnly = true)
	public ToldSegment of(CompetitionView competition, SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		if (!event.competition().equals(competition.id())) {
			throw NotFoundException.of("segment", id);
		}
		SegmentFacts facts = this.segments.one(event, event.segment(id));
		ResultVersion whole = this.standings.latest(event.id()).orElse(null);
		return ToldSegment.of(event, facts, this.segments.tidings(event, facts), whole, times(competition, facts));
	}

	/**
	 * What is told of a team: its times as published and expected, and how it stands.
	 * @throws NotFoundException if the competition has not the event of that entry
	 */
	@Transactional(readOnly = true)
	public ToldTeam team(CompetitionView competition, EntryView entry) {
		EventView event = this.published.events(competition)
			.stream()
			.filter((one) -> one.id().equals(entry.event()))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("event", entry.event()));
		TeamFacts facts = TeamFacts.of(this.events.read(event), entry);
		List<ToldTeam.Time> times = this.expected.ofTeam(competition, entry.id().value())
			.stream()
			.map((time) -> new ToldTeam.Time(time.item(), time.row().line().begins(),
					(time.row().expected() != null) ? time.row().expected().at() : time.row().line().begins()))
			.toList();
		List<ToldTeam.Place> places = facts.skates()
			.stream()
			.filter((skate) -> skate.line() != null)
			.map((skate) -> new ToldTeam.Place(skate.facts().segment().name(),
					Objects.requireNonNull(skate.line()).row().place()))
			.toList();
		StandingTable.Line whole = facts.whole();
		return new ToldTeam("/follow/" + competition.slug() + "/team/" + entry.id(), times, places,
				(whole != null) ? whole.row().place() : null);
	}

	private Map<String, Instant> times(CompetitionView competition, SegmentFacts facts) {
		return this.expected.of(competition, facts.segment())
			.entrySet()
			.stream()
			.collect(Collectors.toMap(Map.Entry::getKey, (one) -> one.getValue().at()));
	}

	/**
	 * What everybody is told of a team.
	 *
	 * @param page its public page, within the application
	 * @param times the earliest first
	 * @param places of the segments that have a standing with the team in it
	 * @param whole its place in the event, {@code null} while it has none
	 */
	public record ToldTeam(String page, List<Time> times, List<Place> places, @Nullable Integer whole) {

		public ToldTeam {
			times = List.copyOf(times);
			places = List.copyOf(places);
		}

		/**
		 * A time of the team.
		 *
		 * @param item what the team is there for, as it was published; practice ice names
		 * the same segment as its performance
		 * @param expected when it is expected now; as published where nothing else is
		 * known
		 */
		public record Time(Programmed.Item item, Instant at, Instant expected) {
		}

		/**
		 * How it stands in a segment.
		 *
		 * @param place {@code null} where it has none
		 */
		public record Place(String segment, @Nullable Integer place) {
		}

	}

}
