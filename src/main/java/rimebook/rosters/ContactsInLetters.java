package rimebook.rosters;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.EntryId;
import rimebook.letters.Addressees;

/**
 * Letters to a team go to its manager, else to a coach, else to whoever looks after it;
 * to somebody with an address before anybody without one. Nobody writes to an emergency
 * contact.
 */
@Component
@Transactional(readOnly = true)
class ContactsInLetters implements Addressees {

	private static final List<ContactView.Kind> ORDER = List.of(ContactView.Kind.MANAGER, ContactView.Kind.COACH,
			ContactView.Kind.CHAPERONE);

	private final Contacts contacts;

	ContactsInLetters(Contacts contacts) {
		this.contacts = contacts;
	}

	@Override
	public Map<EntryId, Addressees.Addressee> of(Collection<EntryId> entries) {
		Map<EntryId, Addressees.Addressee> all = new HashMap<>();
		this.contacts.of(entries)
			.forEach((entry, known) -> known.stream()
				.filter((contact) -> ORDER.contains(contact.kind()))
				.min(Comparator.comparing((ContactView contact) -> contact.mail().isEmpty())
					.thenComparing((contact) -> ORDER.indexOf(contact.kind())))
				.ifPresent((contact) -> all.put(entry, new Addressees.Addressee(contact.name(), contact.mail()))));
		return all;
	}

}
