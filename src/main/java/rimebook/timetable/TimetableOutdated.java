package rimebook.timetable;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Programmed;
import rimebook.wording.Sentence;

/**
 * Tells which teams a published timetable has no longer as they are: entered since,
 * withdrawn, or in another event. Only what publishing again would put right: a team that
 * withdrew after the draw keeps its time, since the others come when it was said.
 */
@Service
@Transactional(readOnly = true)
public class TimetableOutdated {

	private final TimetableVersions versions;

	private final Timetables timetables;

	private final Competitions competitions;

	private final Entries entries;

	TimetableOutdated(TimetableVersions versions, Timetables timetables, Competitions competitions, Entries entries) {
		this.versions = versions;
		this.timetables = timetables;
		this.competitions = competitions;
		this.entries = entries;
	}

	/**
	 * What became different since the timetable in force was published, in one sentence;
	 * empty where nothing did, none was published, or none can be any more.
	 */
	public Optional<Sentence> since(CompetitionId id) {
		return latest(id).flatMap((version) -> {
			List<Sentence> changes = changes(version);
			return changes.isEmpty() ? Optional.empty()
					: Optional.of(Sentence.of("timetable.outdated", version.number(), changes));
		});
	}

	/** The timetable in force, as long as another can take its place. */
	Optional<TimetableVersion> latest(CompetitionId id) {
		return this.competitions.competition(id).state().isOpenToChange() ? this.versions.latest(id) : Optional.empty();
	}

	/** The same team by team. */
	List<Sentence> changes(TimetableVersion version) {
		PlanView plan = this.timetables.plan(version.competition());
		Map<UUID, Part> were = parts(version.timetable());
		Map<UUID, Part> are = parts(Programmed.of(plan.plan(), plan.laid(), plan.programme()));
		List<Sentence> changes = new ArrayList<>();
		are.forEach((entry, now) -> {
			Part was = were.get(entry);
			if (was == null && were.values().stream().anyMatch((part) -> part.isOf(now.event()))) {
				changes.add(Sentence.of("timetable.outdated.entered", now.team(), now.event().name()));
			}
			else if (was != null && !was.isOf(now.event())) {
				changes.add(Sentence.of("timetable.outdated.moved", now.team(), now.event().name()));
			}
		});
		Map<UUID, EntryView> entries = were.equals(are) ? Map.of() : entries(version.competition());
		were.forEach((entry, was) -> {
			EntryView now = entries.get(entry);
			if (now != null && !was.isWithin(are.get(entry))) {
				Sentence gone = gone(was, are, now);
				if (gone != null) {
					changes.add(gone);
				}
			}
		});
		return changes;
	}

	private @Nullable Sentence gone(Part was, Map<UUID, Part> is, EntryView now) {
		if (!now.isEntered()) {
			return Sentence.of("timetable.outdated.withdrawn", was.team());
		}
		return was.event().id().equals(now.event().value()) || is.containsKey(now.id().value()) ? null
				: Sentence.of("timetable.outdated.moved", was.team(), this.competitions.event(now.event()).name());
	}

	/** All entries of a competition, those that withdrew among them. */
	Map<UUID, EntryView> entries(CompetitionId competition) {
		Collection<EventId> events = this.competitions.events(competition).stream().map(EventView::id).toList();
		return this.entries.ofEvents(events)
			.stream()
			.collect(Collectors.toMap((entry) -> entry.id().value(), (entry) -> entry));
	}

	/** Which teams a timetable has, and in which event. */
	static Map<UUID, Part> parts(Programmed timetable) {
		Map<UUID, Part> parts = new LinkedHashMap<>();
		timetable.items().forEach((item) -> {
			Programmed.Of of = item.of();
			if (of != null) {
				item.teams().forEach((line) -> {
					Programme.Team team = Objects.requireNonNull(line.team());
					parts.computeIfAbsent(team.entry(), (entry) -> new Part(team.name(), of.event(), new HashSet<>()))
						.segments()
						.add(of.segment());
				});
			}
		});
		return parts;
	}

	/**
	 * A team in an event.
	 *
	 * @param segments those of the event in which it has a time
	 */
	record Part(String team, Programme.Named event, Set<UUID> segments) {

		/** Tell whether the other has all of it. */
		boolean isWithin(@Nullable Part other) {
			return other != null && other.segments.containsAll(this.segments);
		}

		/** What an event is called does not matter. */
		boolean isOf(Programme.Named other) {
			return this.event.id().equals(other.id());
		}

	}

}
