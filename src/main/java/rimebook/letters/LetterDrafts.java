package rimebook.letters;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/**
 * Fills texts in for teams. Asks the database the same number of questions whatever the
 * number of teams.
 */
@Component
class LetterDrafts {

	private static final int LONGEST_BODY = 30_000;

	private final Competitions competitions;

	private final Entries entries;

	private final LetterTexts texts;

	private final TeamLanguages languages;

	private final Addressees addressees;

	private final ObjectProvider<LetterFacts> facts;

	LetterDrafts(Competitions competitions, Entries entries, LetterTexts texts, TeamLanguages languages,
			Addressees addressees, ObjectProvider<LetterFacts> facts) {
		this.competitions = competitions;
		this.entries = entries;
		this.texts = texts;
		this.languages = languages;
		this.addressees = addressees;
		this.facts = facts;
	}

	/** To whom letters of a kind may go, by event and team, with their addresses. */
	List<Recipient> recipients(CompetitionId id, LetterKind kind) {
		Map<EventId, EventView> events = events(id);
		List<EntryView> teams = teams(kind, events);
		Map<EntryId, Addressees.Addressee> to = to(teams);
		Map<TeamView.Id, Locale> languages = this.languages
			.of(teams.stream().map((entry) -> entry.team().id()).toList());
		return teams.stream()
			.map((entry) -> new Recipient(entry, event(events, entry),
					to.getOrDefault(entry.id(), Addressees.Addressee.NOBODY),
					languages.getOrDefault(entry.team().id(), Locale.ENGLISH)))
			.toList();
	}

	/** The letters to those that were chosen, by event and team. */
	List<Draft> write(CompetitionId id, LetterKind kind, Set<EntryId> chosen, Actor actor) {
		CompetitionView competition = this.competitions.competition(id);
		List<Recipient> to = recipients(id, kind).stream().filter((one) -> chosen.contains(one.entry().id())).toList();
		Map<EntryId, List<LetterFacts.Line>> told = told(id, kind, to.stream().map(Recipient::entry).toList());
		Map<Locale, LetterTexts.Version> texts = this.texts.inForce(id, kind);
		return to.stream().map((one) -> {
			List<LetterFacts.Line> lines = told.getOrDefault(one.entry().id(), List.of());
			Draft.Content text = Objects.requireNonNull(texts.get(one.language())).content();
			return draft(one, text, values(competition, one, lines, actor), !kind.restsOnFacts() || !lines.isEmpty());
		}).toList();
	}

	private static Draft draft(Recipient to, Draft.Content text, Map<String, String> values, boolean told) {
		Placeholders.Filled body = Placeholders.fill(text.body(), values);
		Integer at = body.linkAt();
		// A link that would be cut off is none.
		Draft.Link link = (at != null && at + 200 < LONGEST_BODY) ? new Draft.Link(at, to.takesPart()) : null;
		return new Draft(to.entry(), to.to(), to.language(),
				new Draft.Content(shortened(Placeholders.fill(text.subject(), values).text(), 600),
						shortened(body.text(), LONGEST_BODY)),
				told && (link == null || link.given()), link);
	}

	private Map<EventId, EventView> events(CompetitionId id) {
		return this.competitions.events(this.competitions.competition(id).id())
			.stream()
			.collect(Collectors.toMap(EventView::id, (event) -> event));
	}

	private List<EntryView> teams(LetterKind kind, Map<EventId, EventView> events) {
		return this.entries.ofEvents(events.keySet())
			.stream()
			.filter((entry) -> kind.goesToWithdrawn() || (entry.isEntered() && !event(events, entry).isCancelled()))
			.sorted(Comparator.comparing((entry) -> event(events, entry).listing().position()))
			.toList();
	}

	private static EventView event(Map<EventId, EventView> events, EntryView entry) {
		return Objects.requireNonNull(events.get(entry.event()));
	}

	private Map<EntryId, Addressees.Addressee> to(Collection<EntryView> teams) {
		return this.addressees.of(teams.stream().map(EntryView::id).toList());
	}

	private Map<EntryId, List<LetterFacts.Line>> told(CompetitionId id, LetterKind kind, List<EntryView> teams) {
		Map<EntryId, List<LetterFacts.Line>> told = new HashMap<>();
		this.facts.orderedStream()
			.forEach((source) -> source.of(kind, id, teams)
				.forEach((entry, lines) -> told.merge(entry, lines,
						(before, more) -> Stream.concat(before.stream(), more.stream()).toList())));
		return told;
	}

	private static Map<String, String> values(CompetitionView competition, Recipient to, List<LetterFacts.Line> lines,
			Actor actor) {
		Figures figures = new Figures(to.language());
		String club = to.entry().team().club().name();
		return Map.ofEntries(Map.entry("recipient", to.to().name().isEmpty() ? club : to.to().name()),
				Map.entry("team", to.entry().team().name()), Map.entry("club", club),
				Map.entry("event", to.event().name()), Map.entry("competition", competition.name()),
				Map.entry("place", competition.facts().place()),
				Map.entry("days", figures.days(competition.facts().firstDay(), competition.facts().lastDay())),
				Map.entry("segments", segments(to.event(), to.language())), Map.entry("sender", actor.name()),
				Map.entry(Placeholders.FACTS,
						lines.stream().map((line) -> "- " + line.in(to.language())).collect(Collectors.joining("\n"))),
				Map.entry(Placeholders.LINK, LinkedLetters.notKept(to.language())));
	}

	private static String segments(EventView event, Locale language) {
		return Sentence.of("letters.enumerated",
				event.segments().stream().filter((segment) -> !segment.isCancelled()).map(SegmentView::name).toList())
			.in(language);
	}

	private static String shortened(String text, int most) {
		return (text.length() <= most) ? text : text.substring(0, most - 1) + "…";
	}

	/**
	 * A team that may be written to.
	 *
	 * @param to {@link Addressees.Addressee#hasMail} says whether mail can reach them
	 */
	record Recipient(EntryView entry, EventView event, Addressees.Addressee to, Locale language) {

		/** Tell whether the team takes part. */
		boolean takesPart() {
			return this.entry.isEntered() && !this.event.isCancelled();
		}

	}

}
