package rimebook.competition;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

@Entity
class Competition {

	@Id
	private UUID id;

	@Version
	private Integer version;

	private String slug;

	private String name;

	private String place;

	private String zone;

	private LocalDate firstDay;

	private LocalDate lastDay;

	private String rulebook;

	@Enumerated(EnumType.STRING)
	private CompetitionState state = CompetitionState.PLANNED;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Competition() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	Competition(UUID id, String slug, DraftCompetition facts) {
		this.id = id;
		this.slug = slug;
		write(facts);
	}

	/** Change the facts. The slug stays: an address once given out keeps working. */
	void change(int version, DraftCompetition facts) {
		requireVersion(version);
		checkOpenToChange();
		write(facts);
	}

	/** Check that the move fits the version and state, before others are asked. */
	void checkMove(int version, CompetitionState next) {
		requireVersion(version);
		if (!this.state.canBecome(next)) {
			throw new ConflictException("competition-move", "state",
					Sentence.of("competition.move", this.state.spoken(), next.spoken()));
		}
	}

	void moveTo(CompetitionState next) {
		this.state = next;
	}

	/**
	 * Go back one step from the end: from archived to final, from final to running.
	 * @throws ConflictException {@code competition-not-final} before the end
	 */
	void takeBack(int version) {
		requireVersion(version);
		this.state = this.state.before()
			.orElseThrow(() -> new ConflictException("competition-not-final",
					Sentence.of("competition.not-final", this.state.spoken())));
	}

	void checkOpenToChange() {
		if (!this.state.isOpenToChange()) {
			throw closed(this.state);
		}
	}

	/** What refuses every change at the end, with the way out. */
	static ConflictException closed(CompetitionState state) {
		return new ConflictException("competition-" + state.name().toLowerCase(Locale.ROOT),
				Sentence.of("competition.closed", state.spoken()));
	}

	private void requireVersion(int version) {
		ConflictException.requireSeen("competition", version, this.version);
	}

	private void write(DraftCompetition facts) {
		this.name = facts.name();
		this.place = facts.place();
		this.zone = facts.zone().getId();
		this.firstDay = facts.firstDay();
		this.lastDay = facts.lastDay();
		this.rulebook = facts.rulebook();
	}

	CompetitionId id() {
		return new CompetitionId(this.id);
	}

	CompetitionState state() {
		return this.state;
	}

	CompetitionView view() {
		return new CompetitionView(id(), this.slug, new DraftCompetition(this.name, this.place, ZoneId.of(this.zone),
				this.firstDay, this.lastDay, this.rulebook), this.state, this.version);
	}

	/** The facts in one line, for the record. */
	String inWords() {
		return "%s, %s, %s to %s, %s, %s".formatted(this.name, this.place, this.firstDay, this.lastDay, this.zone,
				this.rulebook);
	}

}
