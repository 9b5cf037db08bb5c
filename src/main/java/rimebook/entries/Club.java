package rimebook.entries;

import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

@Entity
class Club {

	@Id
	private UUID id;

	@Version
	private Integer version;

	private String name;

	private String town;

	/** Its country, or the section of its federation; may be empty. */
	private String section = "";

	/** Which club it turned out to be; what is written here stays beside it. */
	private @Nullable UUID mergedInto;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Club() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	Club(UUID id, String name, String town) {
		this.id = id;
		this.name = name;
		this.town = town;
	}

	/** Tell whether that is its name, in whatever form. */
	boolean isCalled(String name) {
		return FoldedName.ofClub(this.name).isSameAs(FoldedName.ofClub(name));
	}

	/**
	 * Tell whether it has the name that another club is to get: to the letter, or in a
	 * form that the other did not answer to before.
	 */
	boolean isTaken(String name, String before) {
		return this.name.equalsIgnoreCase(name) || (isCalled(name) && !isCalled(before));
	}

	void checkTown(String town) {
		if (!FoldedName.isSame(this.town, town)) {
			throw new RuleViolationException("club-town", "town",
					Sentence.of("entries.club-town", this.name, this.town, town));
		}
	}

	/** Mend what was written down; teams, entries and drawn places stay with the club. */
	void change(Renaming.ChangeClub change) {
		ConflictException.requireSeen("club", change.version(), this.version);
		this.name = change.name();
		this.town = change.town();
		this.section = change.section();
	}

	/** Say that it is another club that was written down a second time. */
	void mergeInto(Club other) {
		this.mergedInto = other.id;
	}

	/** Say that it is a club of its own after all. */
	void separate() {
		this.mergedInto = null;
	}

	/** Which club it turned out to be, {@code null} while it is one of its own. */
	@Nullable UUID mergedInto() {
		return this.mergedInto;
	}

	/** Tell whether it turned out to be another one. */
	boolean isMerged() {
		return this.mergedInto != null;
	}

	String section() {
		return this.section;
	}

	int version() {
		return this.version;
	}

	/** The club in a sentence and on the record. */
	String inWords() {
		return this.name + " (" + this.town + (this.section.isEmpty() ? "" : ", " + this.section) + ")";
	}

	UUID id() {
		return this.id;
	}

	ClubView view() {
		return new ClubView(new ClubView.Id(this.id), this.name, this.town);
	}

}
