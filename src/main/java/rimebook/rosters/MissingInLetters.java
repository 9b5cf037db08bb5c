package rimebook.rosters;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterFacts;
import rimebook.letters.LetterKind;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/** Letters about what is missing tell what the roster of a team lacks, and until when. */
@Component
@Order(1)
@Transactional(readOnly = true)
class MissingInLetters implements LetterFacts {

	private final RosterCheck check;

	private final Competitions competitions;

	MissingInLetters(RosterCheck check, Competitions competitions) {
		this.check = check;
		this.competitions = competitions;
	}

	@Override
	public Map<EntryId, List<LetterFacts.Line>> of(LetterKind kind, CompetitionId competition,
			Collection<EntryView> teams) {
		Map<EntryId, List<LetterFacts.Line>> told = new HashMap<>();
		if (kind == LetterKind.MISSING) {
			ZoneId zone = this.competitions.competition(competition).zone();
			Set<EntryId> asked = teams.stream().map(EntryView::id).collect(Collectors.toSet());
			this.check.of(competition)
				.stream()
				.filter((team) -> asked.contains(team.entry().id()) && !team.missing().isEmpty())
				.forEach((team) -> told.put(team.entry().id(), lines(team, zone)));
		}
		return told;
	}

	private static List<LetterFacts.Line> lines(TeamCheck team, ZoneId zone) {
		List<LetterFacts.Line> lines = new ArrayList<>();
		team.missing().forEach((missing) -> lines.add(LetterFacts.Line.of(missing)));
		Instant deadline = team.rules().deadline();
		if (deadline != null) {
			lines.add((language) -> Sentence
				.of("letters.roster-until", new Figures(language).dayOfYearAndTime(deadline, zone))
				.in(language));
		}
		return lines;
	}

}
