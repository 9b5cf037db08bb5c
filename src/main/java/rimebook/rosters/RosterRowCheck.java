package rimebook.rosters;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.FoldedName;
import rimebook.shared.RuleViolationException;
import rimebook.tables.TableFile;
import rimebook.wording.Sentence;

/**
 * Looks at the rows of a file of rosters one after the other, against what is known
 * already and against the rows before.
 */
final class RosterRowCheck {

	private final Known known;

	private final PeopleIndex people;

	private final LocalDate today;

	private final int width;

	/** Name, birth date and number of who is new, and the line where they came first. */
	private final Map<String, Integer> fresh = new HashMap<>();

	/** Teams and people that came already. */
	private final Set<String> seen = new HashSet<>();

	RosterRowCheck(Known known, PeopleIndex people, LocalDate today, int width) {
		this.known = known;
		this.people = people;
		this.today = today;
		this.width = width;
	}

	/**
	 * The row with what it means, or with everything that is wrong with it.
	 * @param another whether the person says that it is nobody who is known
	 */
	RosterRow check(TableFile.Row row, boolean another) {
		List<RosterRow.Problem> problems = new ArrayList<>();
		RosterRow.Written written = new RosterRow.Written(row.value("event"), row.value("team"),
				(row.value("given_name") + " " + row.value("family_name")).strip());
		if (!row.fits()) {
			problems.add(problem("row", Sentence.of("rosters.import.row-columns", row.columns()),
					Sentence.of("rosters.import.header-columns", this.width)));
		}
		EntryView entry = entry(row, problems);
		DraftSkater skater = skater(row, entry, problems);
		Optional<PlaceRole> part = RosterFile.part(row.value("part"));
		if (part.isEmpty()) {
			problems.add(problem("part", Sentence.of("rosters.import.no-part", shown(row.value("part"))),
					Sentence.of("rosters.import.a-part")));
		}
		if (entry == null || skater == null || !problems.isEmpty()) {
			return new RosterRow(row.line(), written, null, problems);
		}
		return meaning(row, written, new RosterRow.Order(entry, skater, part.orElseThrow(), null, Sentence.NONE),
				another);
	}

	private RosterRow meaning(TableFile.Row row, RosterRow.Written written, RosterRow.Order order, boolean another) {
		List<RosterRow.Problem> problems = new ArrayList<>();
		SkaterView same = this.people
			.same(order.skater(), this.known.there().getOrDefault(order.entry().id(), Set.of()))
			.orElse(null);
		String person = key(order.skater());
		if (!this.seen.add(order.entry().id() + " " + ((same != null) ? same.id().toString() : person))) {
			problems
				.add(problem("row", Sentence.of("rosters.import.twice", written.name(), order.entry().team().name()),
						Sentence.of("rosters.import.once")));
		}
		if (same == null && !another && !this.people.called(written.name()).isEmpty()) {
			problems.add(new RosterRow.Problem("family_name", Sentence.of("rosters.import.near", written.name()),
					Sentence.of("rosters.import.say-another"), true));
		}
		if (!problems.isEmpty()) {
			return new RosterRow(row.line(), written, null, problems);
		}
		Sentence effect = (same != null) ? effect(same, order.skater()) : fresh(person, row.line());
		return new RosterRow(row.line(), written,
				new RosterRow.Order(order.entry(), order.skater(), order.part(), same, effect), List.of());
	}

	private Sentence fresh(String person, int line) {
		Integer before = this.fresh.putIfAbsent(person, line);
		return (before == null) ? Sentence.of("rosters.import.new") : Sentence.of("rosters.import.as-in-line", before);
	}

	private Sentence effect(SkaterView same, DraftSkater draft) {
		SkaterView.Facts now = merged(same, draft).facts();
		if (now.equals(same.facts())) {
			return Sentence.of("rosters.import.known", club(same));
		}
		List<Sentence> what = new ArrayList<>();
		if (!Objects.equals(now.birthDate(), same.facts().birthDate())) {
			what.add(Sentence.of("rosters.import.gets.birth-date"));
		}
		if (!now.membershipNumber().equals(same.facts().membershipNumber())) {
			what.add(Sentence.of("rosters.import.gets.number"));
		}
		if (!now.club().equals(same.facts().club())) {
			what.add(Sentence.of("rosters.import.gets.club"));
		}
		return what.isEmpty() ? Sentence.of("rosters.import.known", club(same))
				: Sentence.of("rosters.import.known-and-gets", club(same), what);
	}

	/** What is known of somebody, with what a file says put in its place. */
	static DraftSkater merged(SkaterView known, DraftSkater draft) {
		SkaterView.Facts facts = known.facts();
		return new DraftSkater(facts.givenName(), facts.familyName(),
				(draft.birthDate() != null) ? draft.birthDate() : facts.birthDate(),
				draft.membershipNumber().isEmpty() ? facts.membershipNumber() : draft.membershipNumber(), draft.club());
	}

	/** Who somebody new is, for rows that name them again. */
	static String key(DraftSkater skater) {
		return FoldedName.of(skater.name()).key() + " " + skater.birthDate() + " " + skater.membershipNumber();
	}

	private String club(SkaterView skater) {
		return this.known.clubs()
			.stream()
			.filter((club) -> club.id().equals(skater.club()))
			.map(ClubView::name)
			.findFirst()
			.orElse("");
	}

	private @Nullable EntryView entry(TableFile.Row row, List<RosterRow.Problem> problems) {
		EventView event = this.known.events()
			.stream()
			.filter((one) -> FoldedName.isSame(one.name(), row.value("event")))
			.findFirst()
			.orElse(null);
		if (event == null) {
			problems.add(problem("event", Sentence.of("rosters.import.no-event", shown(row.value("event"))), Sentence
				.of("rosters.import.one-of", names(this.known.events().stream().map(EventView::name).toList()))));
			return null;
		}
		Sentence shut = this.known.shut().get(event);
		if (shut != null) {
			problems.add(problem("event", shut, Sentence.of("rosters.import.set-aside")));
		}
		List<EntryView> teams = this.known.entries()
			.stream()
			.filter((entry) -> entry.event().equals(event.id()))
			.filter((entry) -> FoldedName.isSame(entry.team().name(), row.value("team")))
			.filter((entry) -> row.value("club").isEmpty()
					|| FoldedName.ofClub(entry.team().club().name()).isSameAs(FoldedName.ofClub(row.value("club"))))
			.toList();
		if (teams.size() == 1) {
			return teams.get(0);
		}
		problems.add(teams.isEmpty()
				? problem("team", Sentence.of("rosters.import.no-team", shown(row.value("team")), event.name()),
						Sentence.of("rosters.import.entered-team"))
				: problem("club", Sentence.of("rosters.import.which-team", row.value("team"), event.name()),
						Sentence.of("rosters.import.its-club")));
		return null;
	}

	private @Nullable DraftSkater skater(TableFile.Row row, @Nullable EntryView entry,
			List<RosterRow.Problem> problems) {
		Optional<LocalDate> born = RosterFile.day(row.value("birth_date"));
		if (!row.value("birth_date").isEmpty()
				&& born.filter((day) -> day.getYear() >= 1900 && !day.isAfter(this.today)).isEmpty()) {
			problems.add(problem("birth_date", Sentence.of("rosters.import.no-day", shown(row.value("birth_date"))),
					Sentence.of("rosters.import.a-day")));
		}
		ClubView.Id club = club(row.value("member_of"), entry, problems);
		if (club == null) {
			return null;
		}
		try {
			return new DraftSkater(row.value("given_name"), row.value("family_name"), born.orElse(null),
					row.value("membership_number"), club);
		}
		catch (RuleViolationException ex) {
			String column = String.valueOf(ex.field()).replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
			problems.add(problem(column, ex.sentence(), Sentence.of("rosters.import.one-line")));
			return null;
		}
	}

	private ClubView.@Nullable Id club(String written, @Nullable EntryView entry, List<RosterRow.Problem> problems) {
		if (written.isEmpty()) {
			return (entry != null) ? entry.team().club().id() : null;
		}
		FoldedName name = FoldedName.ofClub(written);
		Optional<ClubView> club = this.known.clubs()
			.stream()
			.filter((one) -> FoldedName.ofClub(one.name()).isSameAs(name))
			.findFirst();
		if (club.isEmpty()) {
			problems.add(problem("member_of", Sentence.of("rosters.import.no-club", shown(written)),
					Sentence.of("rosters.import.a-club")));
			return null;
		}
		return club.get().id();
	}

	private static RosterRow.Problem problem(String column, Sentence wrong, Sentence expected) {
		return new RosterRow.Problem(column, wrong, expected, false);
	}

	private static String names(Collection<String> names) {
		return names.stream().collect(Collectors.joining(", "));
	}

	private static String shown(String text) {
		return (text.length() <= 40) ? text : text.substring(0, 40) + "…";
	}

	/**
	 * What a file is compared with.
	 *
	 * @param shut events whose rosters cannot be taken from a file now, and why
	 * @param there who is on the roster of each entry
	 */
	record Known(List<EventView> events, List<EntryView> entries, List<ClubView> clubs, Map<EventView, Sentence> shut,
			Map<EntryId, Set<SkaterView.Id>> there) {
	}

}
