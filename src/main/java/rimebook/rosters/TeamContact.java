package rimebook.rosters;

import java.util.UUID;
import java.util.random.RandomGenerator;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/** Somebody who can be reached about the team of an entry. */
@Entity
class TeamContact {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	@Enumerated(EnumType.STRING)
	private ContactView.Kind kind;

	private String name;

	private String phone;

	private String mail;

	private String salt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected TeamContact() {
	}

	TeamContact(UUID id, Contacts.AddContact order, RandomGenerator random) {
		this.id = id;
		this.entry = order.entry().value();
		this.kind = order.kind();
		this.name = order.name();
		this.phone = order.phone();
		this.mail = order.mail();
		this.salt = Commitment.salt(random);
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	/** What the record may say: what somebody is to the team, and no more. */
	String attested() {
		return this.kind.inWords() + ", commitment "
				+ Commitment.of(this.salt, this.kind.name(), this.name, this.phone, this.mail);
	}

	ContactView view() {
		return new ContactView(this.id, entry(), this.kind, this.name, this.phone, this.mail);
	}

}
