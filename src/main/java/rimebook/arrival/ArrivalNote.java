package rimebook.arrival;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.entries.EntryId;
import rimebook.rosters.RosterView;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** That somebody on a roster is here, or no longer: written once. */
@Entity
@Immutable
@Table(name = "arrival_note")
class ArrivalNote extends AppendedRow {

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "place_id")
	private UUID place;

	private int number;

	private boolean here;

	private String notedBy;

	private Instant notedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected ArrivalNote() {
	}

	ArrivalNote(UUID id, EntryId entry, RosterView.PlaceId place, Noted noted, Actor actor, Instant now) {
		super(id);
		this.entry = entry.value();
		this.place = place.value();
		this.number = noted.number();
		this.here = noted.here();
		this.notedBy = actor.name();
		this.notedAt = now;
	}

	RosterView.PlaceId place() {
		return new RosterView.PlaceId(this.place);
	}

	int number() {
		return this.number;
	}

	boolean isHere() {
		return this.here;
	}

	CheckIn.Seen seen() {
		return new CheckIn.Seen(this.notedBy, this.notedAt);
	}

	/** What was noted as which. */
	record Noted(int number, boolean here) {
	}

}
