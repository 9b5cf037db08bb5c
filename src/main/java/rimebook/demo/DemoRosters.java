package rimebook.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.EligibilitySet;
import rimebook.rosters.EligibilitySets;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.Rosters;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;

/**
 * Invented people on the rosters, the same at every start. Some are too young, some have
 * no number, some teams are short and some sent nothing yet, so that there is something
 * to ask for.
 */
@Component
@Profile("demo")
class DemoRosters {

	private static final List<String> GIVEN = List.of("Aelva", "Birrin", "Caldis", "Davin", "Elowis", "Fenka", "Gislan",
			"Halvy", "Ibren", "Jorvi", "Kelsa", "Lumia", "Merrit", "Nolwe", "Orrin", "Pellea", "Quenna", "Rissa",
			"Solvi", "Tamsel", "Ulvia", "Vennet", "Wyllow", "Yrsin", "Zelma");

	private static final List<String> FAMILY = List.of("Arkenfold", "Brackwater", "Coldharrow", "Dunmarrow", "Everholt",
			"Fallowmere", "Grayshaw", "Hollinbeck", "Icewright", "Jarnvik", "Kettlewick", "Larkmoor", "Mistwell",
			"Nethersund", "Oakenrim", "Pinderfell", "Quarrymoor", "Ravensedge", "Saltmarsh", "Thornquill", "Underlund",
			"Vanterholm", "Westerlane", "Yarrowby", "Zandervik");

	private final Entries entries;

	private final Skaters skaters;

	private final Rosters rosters;

	private final Contacts contacts;

	private final EligibilitySets sets;

	private final EventEligibility eligibility;

	DemoRosters(Entries entries, Skaters skaters, Rosters rosters, Contacts contacts, EligibilitySets sets,
			EventEligibility eligibility) {
		this.entries = entries;
		this.skaters = skaters;
		this.rosters = rosters;
		this.contacts = contacts;
		this.sets = sets;
		this.eligibility = eligibility;
	}

	/** Copy a set for an event and fill the rosters of most of its teams. */
	@Transactional
	public void fill(CompetitionView competition, EventView event, String set, int youngest, int oldest) {
		EligibilitySet chosen = this.sets.set(set).orElseThrow();
		LocalDate firstDay = competition.facts().firstDay();
		this.eligibility.set(
				new EventEligibility.SetRules(event.id(), set, chosen.rules(firstDay), chosen.whenFewer(),
						firstDay.minusDays(14).atTime(18, 0).atZone(competition.zone()).toInstant(), -1),
				DemoCrew.SECRETARY);
		List<EntryView> teams = this.entries.ofEvent(event.id());
		for (int number = 0; number < teams.size(); number++) {
			fill(teams.get(number), number, firstDay, new Ages(youngest, oldest));
		}
	}

	private void fill(EntryView team, int number, LocalDate firstDay, Ages ages) {
		Random random = new Random(team.team().name().hashCode());
		if (number % 6 != 3) {
			contact(team, ContactView.Kind.MANAGER, random);
		}
		if (number % 4 != 1) {
			contact(team, ContactView.Kind.EMERGENCY, random);
		}
		if (number % 7 == 5) {
			return;
		}
		int people = (number % 5 == 2) ? 15 : 18;
		for (int place = 0; place < people; place++) {
			boolean young = number % 3 == 1 && place == 4;
			SkaterView skater = this.skaters.add(somebody(team, firstDay, young ? ages.tooYoung() : ages, random),
					DemoCrew.SECRETARY);
			this.rosters.add(team.id(), skater.id(), (place < 16) ? PlaceRole.SKATES : PlaceRole.ALTERNATE, "",
					DemoCrew.SECRETARY);
			if (place % 3 != 0) {
				this.skaters.agree(skater.id(), skater.version(), (ages.oldest() < 18) ? one(FAMILY, random) : "",
						firstDay.minusMonths(2), DemoCrew.SECRETARY);
			}
		}
	}

	private static DraftSkater somebody(EntryView team, LocalDate firstDay, Ages ages, Random random) {
		LocalDate born = LocalDate.of(firstDay.getYear() - 1 - ages.youngest(), 6, 30)
			.minusDays(random.nextInt((ages.oldest() - ages.youngest() + 1) * 365 - 1));
		String number = (random.nextInt(30) == 0) ? "" : "SI-%05d".formatted(random.nextInt(100_000));
		return new DraftSkater(one(GIVEN, random), one(FAMILY, random), born, number, team.team().club().id());
	}

	private void contact(EntryView team, ContactView.Kind kind, Random random) {
		this.contacts.add(
				new Contacts.AddContact(team.id(), kind, one(GIVEN, random) + " " + one(FAMILY, random),
						"+999 %03d %04d".formatted(random.nextInt(1000), random.nextInt(10_000)), ""),
				DemoCrew.SECRETARY);
	}

	private static String one(List<String> names, Random random) {
		return names.get(random.nextInt(names.size()));
	}

	/** From how old to how old somebody is on the cut-off day. */
	private record Ages(int youngest, int oldest) {

		Ages tooYoung() {
			return new Ages(this.youngest - 1, this.youngest - 1);
		}

	}

}
