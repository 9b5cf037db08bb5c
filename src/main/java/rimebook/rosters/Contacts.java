package rimebook.rosters;

import java.security.SecureRandom;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Whom to call about a team: its coaches, its manager, who looks after it, and who is
 * called when something happened. The record is told that somebody was written down and
 * never who. May change at any time, since a telephone number is no part of a roster.
 */
@Service
@Transactional(readOnly = true)
public class Contacts {

	private final TeamContactRepository contacts;

	private final Entries entries;

	private final Acts acts;

	private final SecureRandom random = new SecureRandom();

	Contacts(TeamContactRepository contacts, Entries entries, Acts acts) {
		this.contacts = contacts;
		this.entries = entries;
		this.acts = acts;
	}

	/**
	 * Write somebody down.
	 * @throws NotFoundException if there is no such entry
	 */
	@Transactional
	public ContactView add(AddContact order, Actor actor) {
		EntryId entry = this.entries.entry(order.entry()).id();
		TeamContact contact = this.contacts.saveAndFlush(new TeamContact(this.acts.nextId(), order, this.random));
		this.acts.publish(AuditedChange.of(actor, "roster", entry, "roster.contact-added").to(contact.attested()));
		return contact.view();
	}

	/**
	 * Take somebody off the list; nothing of them is kept.
	 * @throws NotFoundException if there is no such person on the list of that entry
	 */
	@Transactional
	public void remove(EntryId entry, UUID id, Actor actor) {
		TeamContact contact = this.contacts.findById(id)
			.filter((found) -> found.entry().equals(entry))
			.orElseThrow(() -> NotFoundException.of("contact", id));
		this.contacts.delete(contact);
		this.contacts.flush();
		this.acts.publish(AuditedChange.of(actor, "roster", contact.entry(), "roster.contact-removed")
			.from(contact.attested(), ""));
	}

	/** Everybody on the list of an entry, coaches first. */
	public List<ContactView> of(EntryId entry) {
		return of(List.of(entry)).getOrDefault(entry, List.of());
	}

	/** Everybody on the lists of these entries, with one question. */
	public Map<EntryId, List<ContactView>> of(Collection<EntryId> entries) {
		return this.contacts.findByEntryInOrderByKindAscNameAsc(entries.stream().map(EntryId::value).toList())
			.stream()
			.collect(Collectors.groupingBy(TeamContact::entry,
					Collectors.mapping(TeamContact::view, Collectors.toList())));
	}

	/**
	 * The order to write somebody down.
	 *
	 * @param phone digits with blanks, brackets, dashes and a plus before them; may be
	 * empty where there is an address
	 * @param mail may be empty where there is a number
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record AddContact(EntryId entry, ContactView.Kind kind, String name, String phone, String mail) {

		public AddContact {
			name = Name.required("name", name);
			phone = fitting("phone", phone, 40, "\\+?[0-9 ()/.-]{4,40}", "rosters.contact.no-phone");
			mail = fitting("mail", mail, 120, "[^@\\s]+@[^@\\s]+", "rosters.contact.no-mail");
			if (phone.isEmpty() && mail.isEmpty()) {
				throw RuleViolationException.ofField("field-missing", "phone", Sentence.of("shared.field.missing"));
			}
		}

		private static String fitting(String field, @Nullable String typed, int most, String form, String refusal) {
			String text = Required.optional(field, typed, most);
			if (!text.isEmpty() && !text.matches(form)) {
				throw RuleViolationException.ofField("field-form", field, Sentence.of(refusal));
			}
			return text;
		}

	}

}
