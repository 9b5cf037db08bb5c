package rimebook.rosters;

import java.security.SecureRandom;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.FoldedName;
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

	/**
	 * Take somebody off these lists on their request; nothing of them is kept. Only lists
	 * on which somebody of the same name stands are gone through.
	 * @param contacts which of those of that name
	 * @param reason up to 500 characters, without anything of the person
	 * @return off how many lists
	 * @throws RuleViolationException {@code contacts-none} if none is chosen;
	 * {@code reason-personal}; naming the field that does not fit
	 * @throws NotFoundException if there is no such person
	 */
	@Transactional
	public int remove(UUID id, Collection<UUID> contacts, @Nullable String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		List<UUID> called = called(id).stream().map(ContactView::id).filter(contacts::contains).sorted().toList();
		if (called.isEmpty()) {
			throw RuleViolationException.ofField("contacts-none", "contacts", Sentence.of("rosters.contacts-none"));
		}
		List<TeamContact> gone = this.contacts.findAllById(called);
		gone.forEach((contact) -> checkTellsNothing(why, contact.view()));
		this.contacts.deleteAll(gone);
		this.contacts.flush();
		gone.forEach((contact) -> this.acts
			.publish(AuditedChange.of(actor, "roster", contact.entry(), "roster.contact-removed")
				.from(contact.attested(), "")
				.because(why)));
		return gone.size();
	}

	private static void checkTellsNothing(String text, ContactView contact) {
		String plain = Name.compared(text);
		String name = Name.compared(contact.name());
		boolean tells = plain.contains(name.substring(name.lastIndexOf(' ') + 1))
				|| Stream.of(contact.phone(), contact.mail())
					.anyMatch((one) -> !one.isEmpty() && plain.contains(Name.compared(one)));
		if (tells) {
			throw RuleViolationException.ofField("reason-personal", "reason", Sentence.of("rosters.reason-personal"));
		}
	}

	/**
	 * Everybody who has the name of that one, on whatever list; that may be one person or
	 * several.
	 * @throws NotFoundException if there is no such person
	 */
	public List<ContactView> called(UUID id) {
		return called(this.contacts.findById(id).orElseThrow(() -> NotFoundException.of("contact", id)).view().name());
	}

	/** Everybody who has that name, however it was written, on whatever list. */
	public List<ContactView> called(String name) {
		FoldedName folded = FoldedName.of(name);
		return all().stream().filter((one) -> FoldedName.of(one.name()).isSameAs(folded)).toList();
	}

	/** Everybody on all lists, by name. */
	public List<ContactView> all() {
		return this.contacts.findAll(Sort.by("name", "id")).stream().map(TeamContact::view).toList();
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
