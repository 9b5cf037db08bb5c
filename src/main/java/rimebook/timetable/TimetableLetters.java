package rimebook.timetable;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.BoundPdf;
import rimebook.pages.PdfPage;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.TeamChanges;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/**
 * Letters on paper about a changed timetable: what became different for the teams of a
 * club between two published versions. They hold nothing but what was published.
 */
@Service
@Transactional(readOnly = true)
public class TimetableLetters {

	private final TimetableVersions versions;

	private final Competitions competitions;

	private final PdfPage paper;

	private final Acts acts;

	TimetableLetters(TimetableVersions versions, Competitions competitions, PdfPage paper, Acts acts) {
		this.versions = versions;
		this.competitions = competitions;
		this.paper = paper;
		this.acts = acts;
	}

	/**
	 * What each club has to hear.
	 * @throws NotFoundException if one of the versions was never published
	 */
	public List<TeamChanges.OfClub> changes(Between between) {
		return TeamChanges.between(version(between, between.from()).timetable(),
				version(between, between.to()).timetable());
	}

	/**
	 * Put it on the record that letters are printed.
	 * @param languages in which, one at least
	 * @param club the club's name, empty for all of them
	 * @throws RuleViolationException {@code no-letters} if there is nothing to tell
	 */
	@Transactional
	public void note(Between between, List<Locale> languages, String club, Actor actor) {
		List<TeamChanges.OfClub> letters = letters(between, club);
		List<String> said = languages.stream().map((language) -> language.getDisplayLanguage(Locale.ENGLISH)).toList();
		this.acts.publish(AuditedChange.of(actor, "timetable", between.competition(), "timetable.letters-printed")
			.to("from version %d to %d, to %s, in %s".formatted(between.from(), between.to(),
					club.isEmpty() ? letters.size() + " clubs" : club, String.join(" and ", said))));
	}

	/**
	 * Lay the letters out, a sheet or more for each club, language after language.
	 * @param languages in which, one at least
	 * @param club the club's name, empty for all of them
	 * @throws NotFoundException if there is nothing to tell
	 */
	public byte[] print(Between between, List<Locale> languages, String club) {
		List<TeamChanges.OfClub> letters = toldTo(between, club);
		if (letters.isEmpty()) {
			throw NotFoundException.of("letter", between.to());
		}
		CompetitionView competition = this.competitions.competition(between.competition());
		TimetableVersion before = version(between, between.from());
		TimetableVersion now = version(between, between.to());
		List<String> why = IntStream.rangeClosed(between.from() + 1, between.to())
			.mapToObj((number) -> version(between, number).act().note())
			.filter((note) -> !note.isEmpty())
			.toList();
		Instant made = this.acts.now();
		List<BoundPdf.Part> parts = new ArrayList<>();
		for (Locale language : languages) {
			parts.add(new BoundPdf.Part(language.getDisplayLanguage(language), this.paper.of("timetable/letters-paper",
					language,
					Map.of("competition", competition, "zone", competition.zone(), "before", before, "now", now, "why",
							why, "letters", letters, "made", made, "figures", new Figures(language), "size", "A4"),
					made)));
		}
		return (parts.size() == 1) ? parts.get(0).document() : BoundPdf.of(competition.name(), parts, made);
	}

	private List<TeamChanges.OfClub> letters(Between between, String club) {
		List<TeamChanges.OfClub> letters = toldTo(between, club);
		if (letters.isEmpty()) {
			throw new RuleViolationException("no-letters", Sentence.of("timetable.no-letters"));
		}
		return letters;
	}

	private List<TeamChanges.OfClub> toldTo(Between between, String club) {
		return changes(between).stream().filter((one) -> club.isEmpty() || one.club().equals(club)).toList();
	}

	private TimetableVersion version(Between between, int number) {
		return this.versions.version(between.competition(), number)
			.orElseThrow(() -> NotFoundException.of("timetable-version", number));
	}

	/**
	 * Two published versions of a timetable.
	 *
	 * @param from the earlier one
	 * @param to the later one
	 */
	public record Between(CompetitionId competition, int from, int to) {
	}

}
