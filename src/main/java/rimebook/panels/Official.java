package rimebook.panels;

import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

import rimebook.shared.ConflictException;

@Entity
class Official {

	@Id
	private UUID id;

	@Version
	private int version;

	private String name;

	private String club;

	private String qualification;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Official() {
	}

	Official(UUID id, DraftOfficial facts) {
		this.id = id;
		write(facts);
	}

	void change(int version, DraftOfficial facts) {
		ConflictException.requireSeen("official", version, this.version);
		write(facts);
	}

	private void write(DraftOfficial facts) {
		this.name = facts.name();
		this.club = facts.club();
		this.qualification = facts.qualification();
	}

	OfficialView.Id id() {
		return new OfficialView.Id(this.id);
	}

	OfficialView view() {
		return new OfficialView(id(), this.name, this.club, this.qualification, this.version);
	}

	/** The official in one line, for the record. */
	String inWords() {
		return this.name + " (" + (this.club.isEmpty() ? "no club" : this.club) + ")"
				+ (this.qualification.isEmpty() ? "" : ", " + this.qualification);
	}

}
