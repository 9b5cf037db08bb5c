package rimebook.entries;

import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.KeptUntilTheDay;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * How clubs are reached: an address and a telephone number, seen by secretary and referee
 * and on no public page. It is deleted on the day on which the personal data of a
 * competition go, unless a team of the club is in another one that is not over.
 */
@Service
@Transactional(readOnly = true)
public class ClubContacts implements KeptUntilTheDay {

	private final ClubContactRepository contacts;

	private final ClubRepository clubs;

	private final EntryRepository entries;

	private final Competitions competitions;

	private final Acts acts;

	private final SecureRandom random = new SecureRandom();

	ClubContacts(ClubContactRepository contacts, ClubRepository clubs, EntryRepository entries,
			Competitions competitions, Acts acts) {
		this.contacts = contacts;
		this.clubs = clubs;
		this.entries = entries;
		this.competitions = competitions;
		this.acts = acts;
	}

	/** How the club is reached; {@link Reach#UNKNOWN} where that is not known. */
	public Reach of(ClubView.Id club) {
		return this.contacts.findById(club.value()).map(ClubContact::view).orElse(Reach.UNKNOWN);
	}

	/**
	 * Write it down in place of what was known; both empty deletes it. Nothing happens
	 * where all is as before.
	 * @throws rimebook.shared.ConflictException {@code stale-version}
	 * @throws NotFoundException if there is no such club
	 */
	@Transactional
	public Reach set(ClubView.Id club, Reach reach, Actor actor) {
		if (!this.clubs.existsById(club.value())) {
			throw NotFoundException.of("club", club);
		}
		Optional<ClubContact> known = this.contacts.findById(club.value());
		Reach before = known.map(ClubContact::view).orElse(Reach.UNKNOWN);
		if (before.isSameAs(reach)) {
			return before;
		}
		String attested = known.map(ClubContact::attested).orElse("");
		ClubContact contact = known.orElseGet(() -> new ClubContact(club));
		contact.set(reach, this.random);
		if (reach.isUnknown()) {
			remove(contact, attested, club, actor);
			return Reach.UNKNOWN;
		}
		Reach kept = this.contacts.saveAndFlush(contact).view();
		this.acts.publish(AuditedChange.of(actor, "club", club, "club.contact-set").from(attested, contact.attested()));
		return kept;
	}

	private void remove(ClubContact contact, String attested, ClubView.Id club, Actor actor) {
		this.contacts.delete(contact);
		this.contacts.flush();
		this.acts.publish(AuditedChange.of(actor, "club", club, "club.contact-removed").from(attested, ""));
	}

	@Override
	@Transactional
	public void delete(CompetitionId competition, Actor actor) {
		Set<UUID> ending = this.competitions.events(competition)
			.stream()
			.map((event) -> event.id().value())
			.collect(Collectors.toSet());
		this.contacts.findAll()
			.stream()
			.filter((contact) -> isOver(this.entries.eventsOf(Set.of(contact.club().value())), ending))
			.forEach((contact) -> remove(contact, contact.attested(), contact.club(), actor));
	}

	private boolean isOver(List<UUID> events, Set<UUID> ending) {
		return events.stream().anyMatch(ending::contains)
				&& events.stream().filter((event) -> !ending.contains(event)).noneMatch(this::isOpen);
	}

	private boolean isOpen(UUID event) {
		EventView view = this.competitions.event(new EventId(event));
		CompetitionState state = this.competitions.competition(view.competition()).state();
		return state.isOpenToChange();
	}

	/**
	 * How a club is reached.
	 *
	 * @param mail an address of the club, may be empty
	 * @param phone digits with blanks, brackets, dashes and a plus before them, may be
	 * empty
	 * @param version of what was seen
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record Reach(String mail, String phone, int version) {

		/** The version of what was never written down. */
		public static final int NONE = -1;

		/** Nothing is known. */
		public static final Reach UNKNOWN = new Reach("", "", NONE);

		public Reach {
			mail = fitting("mail", mail, 120, "[^@\\s]+@[^@\\s]+", "entries.club.no-mail");
			phone = fitting("phone", phone, 40, "\\+?[0-9 ()/.-]{4,40}", "entries.club.no-phone");
		}

		private static String fitting(String field, @Nullable String typed, int most, String form, String refusal) {
			String text = Required.optional(field, typed, most);
			if (!text.isEmpty() && !text.matches(form)) {
				throw RuleViolationException.ofField("field-form", field, Sentence.of(refusal));
			}
			return text;
		}

		/** Tell whether nothing is known. */
		public boolean isUnknown() {
			return this.mail.isEmpty() && this.phone.isEmpty();
		}

		boolean isSameAs(Reach other) {
			return this.mail.equals(other.mail) && this.phone.equals(other.phone);
		}

	}

}
