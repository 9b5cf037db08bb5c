package rimebook.fees;

import java.io.Serializable;
import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Money;

/**
 * A row of the ledger as others see it.
 *
 * @param entry the team it is about, {@code null} for the club as a whole
 * @param number counts the rows of the club in this competition
 * @param amount below zero where it takes something back
 * @param reverses the row that it takes back, {@code null} for none
 * @param reversed whether a further row takes it back
 */
public record LedgerRowView(Id id, CompetitionId competition, ClubView.Id club, @Nullable EntryId entry, int number,
		BookingKind kind, Money amount, String why, @Nullable Id reverses, boolean reversed, Written written) {

	/** Tell whether somebody may take it back: what follows from entries nobody can. */
	public boolean isReversible() {
		return this.kind != BookingKind.OWED && this.reverses == null && !this.reversed;
	}

	/** Identity of a row. */
	public record Id(UUID value) implements Serializable {

		/**
		 * Read an identity as it stands in an address.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static Id of(String text) {
			return new Id(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/** Who wrote it, and when. */
	public record Written(String by, Instant at) {
	}

}
