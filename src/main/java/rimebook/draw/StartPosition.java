package rimebook.draw;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;

import rimebook.entries.EntryId;

/** A line of a starting order as it is stored. */
@Embeddable
record StartPosition(int number, @Column(name = "group_number") int group, UUID entryId, String ticket,
		String ticketText) {

	StartingOrderView.Start view() {
		return new StartingOrderView.Start(this.number, this.group, new EntryId(this.entryId), this.ticket,
				this.ticketText);
	}

}
