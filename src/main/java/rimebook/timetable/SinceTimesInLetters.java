package rimebook.timetable;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterKind;
import rimebook.letters.SinceLetters;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.TeamChanges;
import rimebook.wording.Sentence;

/**
 * Letters with times are out of date when the timetable is, and when one with other times
 * for their team was published since. Each team is compared with what was in force when
 * it was written to last.
 */
@Component
@Transactional(readOnly = true)
class SinceTimesInLetters implements SinceLetters {

	private final TimetableVersions versions;

	private final TimetableOutdated outdated;

	SinceTimesInLetters(TimetableVersions versions, TimetableOutdated outdated) {
		this.versions = versions;
		this.outdated = outdated;
	}

	@Override
	public Optional<Sentence> since(LetterKind kind, CompetitionId competition, Map<EntryId, Instant> written) {
		return (kind == LetterKind.TIMETABLE)
				? this.outdated.latest(competition).flatMap((latest) -> since(latest, written)) : Optional.empty();
	}

	private Optional<Sentence> since(TimetableVersion latest, Map<EntryId, Instant> written) {
		List<Sentence> changes = this.outdated.changes(latest);
		if (!changes.isEmpty()) {
			return Optional.of(Sentence.of("timetable.letters-outdated", latest.number(), changes));
		}
		Set<String> other = otherTimes(latest, written);
		return other.isEmpty() ? Optional.empty()
				: Optional.of(Sentence.of("timetable.letters-other-times", latest.number(), new ArrayList<>(other)));
	}

	/**
	 * Teams whose times are not those of their letter, and teams that the timetable did
	 * not have when the last letters were written. Whoever withdrew is written to no
	 * more.
	 */
	private Set<String> otherTimes(TimetableVersion latest, Map<EntryId, Instant> written) {
		Map<UUID, EntryView> entries = this.outdated.entries(latest.competition());
		Map<UUID, Instant> left = new HashMap<>();
		written.forEach((entry, at) -> left.put(entry.value(), at));
		Set<String> other = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
		boolean newest = true;
		for (int number = latest.number(); number > 0 && !left.isEmpty(); number--) {
			TimetableVersion version = (number == latest.number()) ? latest
					: this.versions.version(latest.competition(), number).orElseThrow();
			Set<UUID> then = left.entrySet()
				.stream()
				.filter((one) -> !one.getValue().isBefore(version.act().at()))
				.map(Map.Entry::getKey)
				.collect(Collectors.toSet());
			left.keySet().removeAll(then);
			if (then.isEmpty()) {
				continue;
			}
			Set<UUID> had = TimetableOutdated.parts(version.timetable()).keySet();
			boolean counts = newest;
			TeamChanges.between(version.timetable(), latest.timetable())
				.stream()
				.flatMap((club) -> club.teams().stream())
				.map(TeamChanges.OfTeam::team)
				.filter((team) -> then.contains(team.entry())
						|| (counts && !had.contains(team.entry()) && !written.containsKey(new EntryId(team.entry()))))
				.filter((team) -> isEntered(entries, team))
				.forEach((team) -> other.add(team.name()));
			newest = false;
		}
		return other;
	}

	private static boolean isEntered(Map<UUID, EntryView> entries, Programme.Team team) {
		EntryView entry = entries.get(team.entry());
		return entry != null && entry.isEntered();
	}

}
