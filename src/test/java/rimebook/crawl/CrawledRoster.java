package rimebook.crawl;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

import org.springframework.context.ApplicationContext;

import rimebook.arrival.Arrivals;
import rimebook.competition.CompetitionState;
import rimebook.entries.EntryView;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.Retention;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.SamePerson;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.rosters.WaiverView;
import rimebook.rosters.Waivers;
import rimebook.rosters.eligibility.Rule;
import rimebook.testsupport.SmallCompetition;

/** Gives a team a roster on which everything happened that can. */
final class CrawledRoster {

	private static final String NO_JOB = "6f0d9a5e-1f0e-4c53-9d0b-6a3f0d2b7c11";

	private CrawledRoster() {
	}

	/** Nothing is written where nothing may change any more. */
	static void write(ApplicationContext context, SmallCompetition small, EntryView entry) {
		boolean open = small.competition().state().compareTo(CompetitionState.RUNNING) <= 0
				&& !small.event().isCancelled();
		if (!open || !context.getBean(Rosters.class).of(entry.id()).places().isEmpty()) {
			return;
		}
		RosterView.Place first = add(context, entry, PlaceRole.SKATES);
		RosterView.Place second = add(context, entry, PlaceRole.ALTERNATE);
		Rosters rosters = context.getBean(Rosters.class);
		rosters.stepIn(second.id(), second.version(), first.id(), first.version(), "Ill.", SmallCompetition.REFEREE);
		Contacts contacts = context.getBean(Contacts.class);
		ContactView gone = contacts.add(
				new Contacts.AddContact(entry.id(), ContactView.Kind.COACH, "Nell Thaw", "040 12345", ""),
				SmallCompetition.REFEREE);
		contacts.remove(entry.id(), gone.id(), SmallCompetition.REFEREE);
		contacts.add(new Contacts.AddContact(entry.id(), ContactView.Kind.MANAGER, "Nell Thaw", "", "nell@example.org"),
				SmallCompetition.REFEREE);
		Waivers waivers = context.getBean(Waivers.class);
		WaiverView waiver = waivers.waive(
				new Waivers.Waive(entry.id(), Rule.AGE, second.id(), "Allowed by the office."),
				SmallCompetition.REFEREE);
		waivers.takeBack(waiver.id(), waiver.version(), "Not allowed after all.", SmallCompetition.REFEREE);
		waivers.waive(new Waivers.Waive(entry.id(), Rule.LEAST_ON_ICE, null, "A small club."),
				SmallCompetition.REFEREE);
		Skaters skaters = context.getBean(Skaters.class);
		SkaterView agreed = skaters.agree(second.skater().id(), second.skater().version(), "Guardian Hoar",
				LocalDate.of(2027, 1, 4), SmallCompetition.REFEREE);
		skaters.disagree(agreed.id(), agreed.version(), SmallCompetition.REFEREE);
		context.getBean(Retention.class)
			.set(small.competition().id(), LocalDate.of(2031, 1, 1), Retention.View.NONE, SmallCompetition.SECRETARY);
		SkaterView twin = skaters.add(
				new DraftSkater("Aila", agreed.facts().familyName(), null, "", entry.team().club().id()),
				SmallCompetition.REFEREE);
		context.getBean(SamePerson.class)
			.merge(new SamePerson.Merge(twin.id(), twin.version(), agreed.id(), skaters.skater(agreed.id()).version(),
					"Written down twice."), SmallCompetition.REFEREE);
		Arrivals arrivals = context.getBean(Arrivals.class);
		if (entry.isEntered()) {
			arrivals.noteAll(entry.id(), SmallCompetition.SECRETARY);
			arrivals.note(second.id(), false, SmallCompetition.REFEREE);
		}
		skaters.erase(first.skater().id(), first.skater().version(), "On request.", SmallCompetition.REFEREE);
	}

	private static RosterView.Place add(ApplicationContext context, EntryView entry, PlaceRole role) {
		DraftSkater draft = new DraftSkater("Aila", "Rime " + UUID.randomUUID().toString().replace("-", ""),
				LocalDate.of(2011, 3, 9), "", entry.team().club().id());
		return context.getBean(Rosters.class)
			.addNew(entry.id(), draft, role, false, "Told by the manager.", SmallCompetition.REFEREE);
	}

	/**
	 * What stands on the roster of the first of these entries. Files are written too
	 * seldom for one to be there, so the page of one is asked for that nobody knows of.
	 */
	static Map<String, List<String>> ids(ApplicationContext context, List<EntryView> entries) {
		if (entries.isEmpty()) {
			return Map.of("place", List.of(), "skater", List.of(), "contact", List.of(), "waiver", List.of(), "job",
					List.of(NO_JOB));
		}
		EntryView entry = entries.get(0);
		List<RosterView.Place> places = context.getBean(Rosters.class).of(entry.id()).places();
		return Map.of("place", words(places.stream().map(RosterView.Place::id)), "skater",
				words(places.stream().flatMap((place) -> people(context, place.skater()))), "contact",
				words(context.getBean(Contacts.class).of(entry.id()).stream().map(ContactView::id)), "waiver",
				words(context.getBean(Waivers.class).of(entry.id()).stream().map(WaiverView::id)), "job",
				List.of(NO_JOB));
	}

	/** With who turned out to be that person. */
	private static Stream<SkaterView.Id> people(ApplicationContext context, SkaterView skater) {
		return Stream.concat(Stream.of(skater), context.getBean(SamePerson.class).alsoWrittenDown(skater.id()).stream())
			.map(SkaterView::id);
	}

	private static List<String> words(Stream<?> ids) {
		return ids.map(Object::toString).toList();
	}

}
