package rimebook.entries;

import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;

import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.wording.Sentence;

@Entity
class Team {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@ManyToOne(fetch = FetchType.LAZY, optional = false)
	private Club club;

	private String name;

	private String spokenAs = "";

	/** Whose it was before that club turned out to be this one. */
	private @Nullable UUID mergedFrom;

	/** So that the count of changes never goes back when the team goes over. */
	private int carried;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Team() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	Team(UUID id, Club club, String name) {
		this.id = id;
		this.club = club;
		this.name = name;
	}

	/** Tell whether that is its name, in whatever form. */
	boolean isCalled(String name) {
		return FoldedName.isSame(this.name, name);
	}

	/** As {@link Club#isTaken} among the teams of a club. */
	boolean isTaken(String name, String before) {
		return this.name.equalsIgnoreCase(name) || (isCalled(name) && !isCalled(before));
	}

	/** Say the name so from now on; an empty text leaves it as it is known. */
	void say(String spokenAs) {
		if (!spokenAs.isEmpty()) {
			this.spokenAs = spokenAs;
		}
	}

	/** Mend what was written down; entries and drawn places stay with the team. */
	void change(Renaming.ChangeTeam change) {
		ConflictException.requireSeen("team", change.version(), this.version);
		this.name = change.name();
		this.spokenAs = change.spokenAs();
	}

	int version() {
		return this.version;
	}

	/** Let it be a team of the club that its own turned out to be. */
	void giveTo(Club other) {
		this.mergedFrom = this.club.id();
		goOver(other);
	}

	/** Let it be a team of that club again. */
	void giveBackTo(Club one) {
		this.mergedFrom = null;
		goOver(one);
	}

	private void goOver(Club to) {
		this.carried += Math.max(0, this.club.version() - to.version());
		this.club = to;
	}

	Club club() {
		return this.club;
	}

	UUID id() {
		return this.id;
	}

	TeamView view() {
		return new TeamView(new TeamView.Id(this.id), this.name, this.club.view(), this.spokenAs);
	}

	/** The team in a sentence. */
	Sentence spoken() {
		ClubView club = this.club.view();
		return this.spokenAs.isEmpty() ? Sentence.of("entries.team", this.name, club.name(), club.town())
				: Sentence.of("entries.team.spoken-as", this.name, club.name(), club.town(), this.spokenAs);
	}

	/** The team on the record. */
	String inWords() {
		return spoken().english();
	}

}
