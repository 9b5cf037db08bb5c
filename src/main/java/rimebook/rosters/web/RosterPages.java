package rimebook.rosters.web;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Choice;
import rimebook.rosters.ContactView;
import rimebook.rosters.Namesakes;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterCheck;
import rimebook.rosters.RosterView;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.rosters.TeamCheck;
import rimebook.rosters.Waivers;

/** Puts what the page of a roster shows into its model. */
@Component
class RosterPages {

	private static final Comparator<RosterView.Place> BY_PART = Comparator.comparing(RosterView.Place::role)
		.thenComparing(RosterView.Place::number);

	private final Competitions competitions;

	private final Entries entries;

	private final RosterCheck check;

	private final Skaters skaters;

	private final Waivers waivers;

	private final Namesakes namesakes;

	RosterPages(Competitions competitions, Entries entries, RosterCheck check, Skaters skaters, Waivers waivers,
			Namesakes namesakes) {
		this.namesakes = namesakes;
		this.competitions = competitions;
		this.entries = entries;
		this.check = check;
		this.skaters = skaters;
		this.waivers = waivers;
	}

	/** The page of one roster; forms that are not in the model yet come empty. */
	String roster(EntryId entry, Model model) {
		TeamCheck team = this.check.of(entry);
		CompetitionView competition = this.competitions.competition(team.event().competition());
		ClubView.Id home = team.entry().team().club().id();
		model.addAttribute("team", team);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("places", team.roster().places().stream().sorted(BY_PART).toList());
		model.addAttribute("twice", this.namesakes.of(List.of(team.roster())).getOrDefault(entry, List.of()));
		model.addAttribute("names",
				team.roster()
					.places()
					.stream()
					.collect(Collectors.toMap((place) -> place.id().toString(), (place) -> place.skater().name())));
		model.addAttribute("numbers",
				team.roster()
					.places()
					.stream()
					.collect(Collectors.toMap(RosterView.Place::number, (place) -> place.skater().name())));
		model.addAttribute("waivers", this.waivers.of(entry));
		model.addAttribute("clubNames", clubNames());
		model.addAttribute("clubs", clubs());
		model.addAttribute("kinds", ContactView.Kind.values());
		model.addAttribute("parts", List.of(PlaceRole.SKATES, PlaceRole.ALTERNATE));
		addIfMissing(model, "skaterForm", SkaterForm.empty(home));
		addIfMissing(model, "knownForm", KnownForm.empty());
		addIfMissing(model, "contactForm", ContactForm.empty());
		model.addAttribute("known", known(team, (SkaterForm) Objects.requireNonNull(model.getAttribute("skaterForm"))));
		return "rosters/roster";
	}

	/** Where an entry is: its event and competition. */
	String where(EntryView entry) {
		EventView event = this.competitions.event(entry.event());
		return event.name() + ", " + this.competitions.competition(event.competition()).name();
	}

	/** On the lists of which teams these stand. */
	List<Listed> lists(List<ContactView> contacts) {
		return contacts.stream().map((contact) -> listed(contact, this.entries.entry(contact.entry()))).toList();
	}

	private Listed listed(ContactView contact, EntryView entry) {
		return new Listed(contact, entry, where(entry));
	}

	/** What each club is called, by its identity. */
	Map<String, String> clubNames() {
		return this.entries.clubs().stream().collect(Collectors.toMap((club) -> club.id().toString(), ClubView::name));
	}

	List<Choice> clubs() {
		return this.entries.clubs().stream().map((club) -> Choice.of(club.id(), club.name())).toList();
	}

	/** Those of the same club, and whoever has the name that was just typed. */
	private List<Choice> known(TeamCheck team, SkaterForm typed) {
		Set<SkaterView.Id> there = team.roster()
			.present()
			.stream()
			.map((place) -> place.skater().id())
			.collect(Collectors.toSet());
		String name = (typed.givenName() + " " + typed.familyName()).strip();
		Map<ClubView.Id, String> clubs = this.entries.clubs()
			.stream()
			.collect(Collectors.toMap(ClubView::id, ClubView::name));
		return Stream.concat(Stream.of(new Choice("", "–")),
				this.skaters.all()
					.stream()
					.filter((skater) -> !there.contains(skater.id()))
					.filter((skater) -> skater.club().equals(team.entry().team().club().id())
							|| skater.name().equalsIgnoreCase(name))
					.map((skater) -> Choice.of(skater.id(), skater.facts().familyName() + ", "
							+ skater.facts().givenName() + " (" + clubs.get(skater.club()) + ")")))
			.toList();
	}

	private static void addIfMissing(Model model, String name, Object form) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	/** Somebody on the list of a team, and where that is. */
	record Listed(ContactView contact, EntryView entry, String where) {
	}

}
