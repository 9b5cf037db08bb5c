package rimebook.entries;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.FoldedName;
import rimebook.shared.Name;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Looks at the rows of a file one after the other, against what is on the lists already
 * and against the rows before.
 */
final class RowCheck {

	private final Map<String, EventView> events = new HashMap<>();

	private final KnownTeams known;

	private final Map<EventId, Sentence> shutEvents;

	/** Event, club and team of what is entered, and where it was seen. */
	private final Map<String, Sentence> entered = new HashMap<>();

	RowCheck(List<EventView> events, KnownTeams known, List<EntryView> entries, Map<EventId, Sentence> shutEvents) {
		this.known = known;
		events.forEach((event) -> this.events.put(key(event.name()), event));
		entries.stream()
			.filter(EntryView::isEntered)
			.forEach((entry) -> this.entered.put(key(entry), Sentence.of("entries.import.seen.on-the-list")));
		this.shutEvents = shutEvents;
	}

	/**
	 * The same row with everything that is wrong with it, or with the names as they are
	 * written down.
	 * @param another whether the person says that it is none of those it is near to
	 */
	EntryImport.Row check(EntryImport.Row row, boolean another) {
		List<EntryImport.Problem> problems = new ArrayList<>(row.problems());
		name(row.names().club(), "club", problems);
		name(row.names().town(), "town", problems);
		name(row.names().team(), "team", problems);
		spoken(row.names().spokenAs(), problems);
		event(row.event(), problems);
		if (problems.isEmpty()) {
			town(row, problems);
			duplicate(row, problems);
			slip(row, another, problems);
		}
		if (problems.isEmpty()) {
			return good(row);
		}
		return row.with(problems);
	}

	private EntryImport.Row good(EntryImport.Row row) {
		this.known.add(row.names().club(), row.names().town(), row.names().team());
		this.entered.put(key(row), Sentence.of("entries.import.seen.in-line", row.line()));
		String club = this.known.club(row.names().club());
		return row.as(club, this.known.town(club).orElse(row.names().town()),
				this.known.team(club, row.names().team()));
	}

	/** The event of that name, which a good row has. */
	EventView event(String name) {
		return Objects.requireNonNull(this.events.get(key(name)));
	}

	private void event(String name, List<EntryImport.Problem> problems) {
		EventView event = this.events.get(key(name));
		Sentence shut = (event != null) ? this.shutEvents.get(event.id()) : null;
		if (event == null) {
			problems.add(new EntryImport.Problem("event",
					name.isEmpty() ? Sentence.of("entries.import.event-missing")
							: Sentence.of("entries.import.no-event", shown(name)),
					Sentence.of("entries.import.one-of", names())));
		}
		else if (shut != null) {
			problems.add(new EntryImport.Problem("event", shut, Sentence.of("entries.import.set-aside")));
		}
	}

	private static void name(String text, String column, List<EntryImport.Problem> problems) {
		if (text.isEmpty()) {
			problems.add(new EntryImport.Problem(column, Sentence.of("entries.import.missing." + column),
					Sentence.of("entries.import.a-name", Name.LONGEST)));
		}
		else {
			spelling(text, column, problems);
		}
	}

	private static void spoken(String text, List<EntryImport.Problem> problems) {
		spelling(text, "spoken_as", problems);
	}

	private static void spelling(String text, String column, List<EntryImport.Problem> problems) {
		try {
			Name.optional(column, text);
		}
		catch (RuleViolationException ex) {
			problems.add(new EntryImport.Problem(column, ex.sentence(),
					Sentence.of("entries.import.one-line", Name.LONGEST)));
		}
	}

	private void town(EntryImport.Row row, List<EntryImport.Problem> problems) {
		this.known.town(row.names().club())
			.filter((known) -> !FoldedName.isSame(known, row.names().town()))
			.ifPresent((known) -> problems.add(new EntryImport.Problem("town",
					Sentence.of("entries.import.another-town", row.names().club(), known, row.names().town()),
					Sentence.of("entries.import.same-town", known))));
	}

	private void duplicate(EntryImport.Row row, List<EntryImport.Problem> problems) {
		Sentence seen = this.entered.get(key(row));
		if (seen != null) {
			problems.add(new EntryImport.Problem("team", Sentence.of("entries.import.seen", row.names().team(), seen),
					Sentence.of("entries.import.once")));
		}
	}

	private void slip(EntryImport.Row row, boolean another, List<EntryImport.Problem> problems) {
		this.known.slip(row.names().club(), row.names().team())
			.filter((slip) -> !another)
			.ifPresent((slip) -> problems.add(new EntryImport.Problem(slip.field(), slip.spoken(),
					Sentence.of("entries.import.write-known", slip.near()), true)));
	}

	private String names() {
		return this.events.values()
			.stream()
			.sorted((one, other) -> Integer.compare(one.listing().position(), other.listing().position()))
			.map(EventView::name)
			.collect(Collectors.joining(", "));
	}

	private String key(EntryView entry) {
		String event = this.events.values()
			.stream()
			.filter((each) -> each.id().equals(entry.event()))
			.map(EventView::name)
			.findFirst()
			.orElse("");
		return key(event, entry.team().club().name(), entry.team().name());
	}

	private String key(EntryImport.Row row) {
		String club = this.known.club(row.names().club());
		return key(row.event(), club, this.known.team(club, row.names().team()));
	}

	private static String key(String... texts) {
		return String.join("\n", texts).toLowerCase(Locale.ROOT);
	}

	private static String shown(String text) {
		return (text.length() <= 40) ? text : text.substring(0, 40) + "…";
	}

}
