package rimebook.music;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterFacts;
import rimebook.letters.LetterKind;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/**
 * Letters about what is missing tell for which segments a team has no music, where music
 * is kept here at all, and until when it is taken.
 */
@Component
@Order(2)
@Transactional(readOnly = true)
class MusicInLetters implements LetterFacts {

	private final Music music;

	private final MusicDeadlines deadlines;

	private final Competitions competitions;

	MusicInLetters(Music music, MusicDeadlines deadlines, Competitions competitions) {
		this.music = music;
		this.deadlines = deadlines;
		this.competitions = competitions;
	}

	@Override
	public Map<EntryId, List<LetterFacts.Line>> of(LetterKind kind, CompetitionId id, Collection<EntryView> teams) {
		Map<EntryId, List<LetterFacts.Line>> told = new HashMap<>();
		if (kind == LetterKind.MISSING) {
			this.competitions.events(id)
				.forEach((event) -> event.segments()
					.stream()
					.filter((segment) -> !event.isCancelled(segment.id()))
					.forEach((segment) -> lacking(event, segment, teams)
						.forEach((team) -> told.computeIfAbsent(team.id(), (none) -> new ArrayList<>())
							.add(LetterFacts.Line.of(Sentence.of("letters.no-music", segment.name()))))));
			deadline(this.competitions.competition(id))
				.ifPresent((line) -> told.values().forEach((lines) -> lines.add(line)));
		}
		return told;
	}

	private List<EntryView> lacking(EventView event, SegmentView segment, Collection<EntryView> teams) {
		Optional<Set<EntryId>> have = this.music.withMusic(segment.id());
		return have.isEmpty() ? List.of()
				: teams.stream()
					.filter((team) -> team.event().equals(event.id()) && !have.get().contains(team.id()))
					.toList();
	}

	private Optional<LetterFacts.Line> deadline(CompetitionView competition) {
		Instant closes = this.deadlines.of(competition.id()).closesAt();
		return (closes == null) ? Optional.empty()
				: Optional.of((language) -> Sentence
					.of("letters.music-until", new Figures(language).dayOfYearAndTime(closes, competition.zone()))
					.in(language));
	}

}
