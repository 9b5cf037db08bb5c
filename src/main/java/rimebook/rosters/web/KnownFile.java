package rimebook.rosters.web;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.SamePerson;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.rosters.WaiverView;
import rimebook.rosters.Waivers;

/** Puts together everything that is known of somebody. */
@Component
class KnownFile {

	private final Skaters skaters;

	private final SamePerson same;

	private final Rosters rosters;

	private final Waivers waivers;

	private final Contacts contacts;

	private final Entries entries;

	private final RosterPages pages;

	KnownFile(Skaters skaters, SamePerson same, Rosters rosters, Waivers waivers, Contacts contacts, Entries entries,
			RosterPages pages) {
		this.skaters = skaters;
		this.same = same;
		this.rosters = rosters;
		this.waivers = waivers;
		this.contacts = contacts;
		this.entries = entries;
		this.pages = pages;
	}

	/** Of somebody who skates, with the lists on which somebody of that name stands. */
	Known of(SkaterView.Id id) {
		SkaterView skater = this.skaters.skater(id);
		List<SkaterView> also = this.same.alsoWrittenDown(id);
		List<KnownPlace> places = Stream.concat(Stream.of(id), also.stream().map(SkaterView::id))
			.flatMap((one) -> this.rosters.of(one).entrySet().stream())
			.map((place) -> place(place.getKey(), place.getValue()))
			.toList();
		return new Known(person(skater), also.stream().map(this::person).toList(), places,
				this.pages.lists(this.contacts.called(skater.name())).stream().map(KnownContact::of).toList());
	}

	private KnownPerson person(SkaterView skater) {
		SkaterView.Facts facts = skater.facts();
		return new KnownPerson(skater.id().toString(), facts.givenName(), facts.familyName(), facts.birthDate(),
				facts.membershipNumber(), String.valueOf(this.pages.clubNames().get(facts.club().toString())),
				skater.consent(), skater.isErased());
	}

	private KnownPlace place(RosterView.Place place, EntryId id) {
		EntryView entry = this.entries.entry(id);
		List<WaiverView> waivers = this.waivers.of(id)
			.stream()
			.filter((waiver) -> place.id().equals(waiver.place()))
			.toList();
		return new KnownPlace(entry.team().name(), this.pages.where(entry), place.number(), place.role(),
				place.insteadOf(),
				waivers.stream().map((waiver) -> waiver.rule().word() + ": " + waiver.given().reason()).toList());
	}

	/**
	 * Everything that is known of somebody.
	 *
	 * @param alsoWrittenDown what was written down of them a second time
	 * @param called the lists of whom to call on which somebody of the same name stands,
	 * who may be another person
	 */
	record Known(KnownPerson person, List<KnownPerson> alsoWrittenDown, List<KnownPlace> rosters,
			List<KnownContact> called) {
	}

	/** Every list of whom to call on which somebody stands. */
	record KnownLists(List<KnownContact> called) {
	}

	/** What was written down of somebody. */
	record KnownPerson(String identity, String givenName, String familyName, @Nullable LocalDate birthDate,
			String membershipNumber, String club, SkaterView.Consent consent, boolean deleted) {
	}

	/** A place on a roster, with the rules that were waived for them. */
	record KnownPlace(String team, String event, int place, PlaceRole part, @Nullable Integer insteadOfPlace,
			List<String> waived) {
	}

	/** A place on the list of whom to call about a team. */
	record KnownContact(String identity, String name, ContactView.Kind kind, String phone, String mail, String team,
			String event) {

		static KnownContact of(RosterPages.Listed listed) {
			ContactView contact = listed.contact();
			return new KnownContact(contact.id().toString(), contact.name(), contact.kind(), contact.phone(),
					contact.mail(), listed.entry().team().name(), listed.where());
		}

	}

}
