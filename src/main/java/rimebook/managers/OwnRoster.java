package rimebook.managers;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.SkaterView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The roster of the team of a link, and whom to call about it. Nobody sees a birth date
 * or a membership number here, only that it is known; of people who are known elsewhere
 * nothing is told at all.
 */
@Service
@Transactional(readOnly = true)
public class OwnRoster {

	private static final Comparator<Person> BY_PART = Comparator.comparing(Person::role).thenComparing(Person::number);

	private final OwnTeam own;

	private final Rosters rosters;

	private final Contacts contacts;

	OwnRoster(OwnTeam own, Rosters rosters, Contacts contacts) {
		this.own = own;
		this.rosters = rosters;
		this.contacts = contacts;
	}

	/** Everybody on the roster: who skates, who stands by, who was on it. */
	public List<Person> people(TeamLinks.Pass pass) {
		return this.rosters.of(entry(pass)).places().stream().map(Person::of).sorted(BY_PART).toList();
	}

	/**
	 * Somebody on the roster.
	 * @throws NotFoundException if that is no place on this roster
	 */
	public Person person(TeamLinks.Pass pass, RosterView.PlaceId id) {
		return Person.of(place(pass, id));
	}

	/** Tell whether what is known of somebody is this team's alone to say. */
	public boolean isOwn(TeamLinks.Pass pass, RosterView.PlaceId id) {
		return this.rosters.isOwnTo(place(pass, id).id());
	}

	/** Why the roster is not changed here any more; empty while it is. */
	public Optional<Sentence> refusal(TeamLinks.Pass pass) {
		return this.own.about(pass).entry().isEntered() ? this.rosters.refusalOfManagers(entry(pass))
				: Optional.of(Sentence.of("managers.withdrawn"));
	}

	/**
	 * Put somebody on the roster.
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}, and as
	 * {@link Rosters#addApart}
	 */
	@Transactional
	public void add(TeamLinks.Pass pass, Facts typed, PlaceRole role, Actor actor) {
		EntryView entry = this.own.toChange(pass).entry();
		this.rosters.addApart(entry.id(), new DraftSkater(typed.givenName(), typed.familyName(), typed.birthDate(),
				typed.membershipNumber(), entry.team().club().id()), role, actor);
	}

	/**
	 * Mend what is known of somebody; what is left empty stays as it is known.
	 * @param version of the person as they were seen
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}, and as
	 * {@link Rosters#mend}
	 */
	@Transactional
	public void mend(TeamLinks.Pass pass, RosterView.PlaceId id, int version, Facts typed, Actor actor) {
		this.own.toChange(pass);
		SkaterView.Facts known = place(pass, id).skater().facts();
		this.rosters.mend(id, version, new DraftSkater(typed.givenName(), typed.familyName(),
				(typed.birthDate() != null) ? typed.birthDate() : known.birthDate(),
				typed.membershipNumber().isBlank() ? known.membershipNumber() : typed.membershipNumber(), known.club()),
				actor);
	}

	/**
	 * Give somebody another part: skate, stand by, or leave the roster.
	 * @param version of the place as it was seen
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}, and as
	 * {@link Rosters#change}
	 */
	@Transactional
	public void become(TeamLinks.Pass pass, RosterView.PlaceId id, int version, PlaceRole role, Actor actor) {
		this.own.toChange(pass);
		this.rosters.change(place(pass, id).id(), version, role, "", actor);
	}

	/**
	 * Note that somebody's name may be printed, or may not.
	 * @param version of the person as they were seen
	 * @param guardian who agrees for a minor; empty where they agree themselves
	 * @param on the day of the consent, {@code null} where there is none
	 * @throws RuleViolationException {@code guardian-missing} for a minor
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}, and as
	 * {@link Rosters#mend}
	 */
	@Transactional
	public void consent(TeamLinks.Pass pass, RosterView.PlaceId id, int version, String guardian,
			@Nullable LocalDate on, Actor actor) {
		this.own.toChange(pass);
		LocalDate born = place(pass, id).skater().facts().birthDate();
		if (on != null && born != null && born.plusYears(18).isAfter(on) && guardian.isBlank()) {
			throw RuleViolationException.ofField("guardian-missing", "guardian",
					Sentence.of("managers.guardian-missing"));
		}
		this.rosters.consent(id, version, guardian, on, actor);
	}

	/** Whom to call about the team. */
	public List<ContactView> contacts(TeamLinks.Pass pass) {
		return this.contacts.of(entry(pass));
	}

	/**
	 * Write somebody down who is called about the team.
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}
	 */
	@Transactional
	public void addContact(TeamLinks.Pass pass, ContactView.Kind kind, String name, String phone, String mail,
			Actor actor) {
		EntryId entry = this.own.toChange(pass).entry().id();
		this.contacts.add(new Contacts.AddContact(entry, kind, name, phone, mail), actor);
	}

	/**
	 * Take somebody off that list.
	 * @throws NotFoundException if they are not on the list of this team
	 */
	@Transactional
	public void removeContact(TeamLinks.Pass pass, UUID id, Actor actor) {
		this.contacts.remove(entry(pass), id, actor);
	}

	private RosterView.Place place(TeamLinks.Pass pass, RosterView.PlaceId id) {
		return this.rosters.of(entry(pass))
			.places()
			.stream()
			.filter((place) -> place.id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("place", id));
	}

	private static EntryId entry(TeamLinks.Pass pass) {
		return new EntryId(pass.entry());
	}

	/**
	 * What is typed of somebody.
	 *
	 * @param birthDate {@code null} where nothing was typed
	 */
	public record Facts(String givenName, String familyName, @Nullable LocalDate birthDate, String membershipNumber) {
	}

	/**
	 * Somebody on the roster as their team sees them.
	 *
	 * @param name empty once it was deleted
	 * @param bornKnown whether the birth date is known
	 * @param numberKnown whether the membership number is known
	 * @param version of the place
	 * @param personVersion of what is known of the person
	 */
	public record Person(RosterView.PlaceId id, int number, String givenName, String familyName, PlaceRole role,
			boolean bornKnown, boolean numberKnown, SkaterView.Consent consent, int version, int personVersion) {

		static Person of(RosterView.Place place) {
			SkaterView.Facts facts = place.skater().facts();
			return new Person(place.id(), place.number(), facts.givenName(), facts.familyName(), place.role(),
					facts.birthDate() != null, !facts.membershipNumber().isEmpty(), place.skater().consent(),
					place.version(), place.skater().version());
		}

		/** Given and family name. */
		public String name() {
			return (this.givenName + " " + this.familyName).strip();
		}

	}

}
