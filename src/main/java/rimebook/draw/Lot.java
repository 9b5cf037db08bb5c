package rimebook.draw;

import java.util.Comparator;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/**
 * What the draw knows of an entry.
 *
 * @param entry the entry
 * @param place its place in the standing, {@code null} if it has none
 * @param ticket its ticket in hexadecimal digits
 * @param digested the text of the ticket
 */
record Lot(EntryId entry, @Nullable Integer place, String ticket, String digested) {

	/** The lot that a ticket gives. */
	static Lot of(EntryId entry, @Nullable Integer place, DrawTicket ticket) {
		return new Lot(entry, place, ticket.hex(), ticket.text());
	}

	/** By ticket; the same ticket twice means the same names twice, then by identity. */
	static final Comparator<Lot> BY_TICKET = Comparator.comparing(Lot::ticket)
		.thenComparing((lot) -> lot.entry().value());

	/** Best place first; entries without a place share the last one. */
	static final Comparator<Lot> BY_STANDING = Comparator.comparingInt(Lot::rank).thenComparing(BY_TICKET);

	/** Worst place first, equal places by ticket. */
	static final Comparator<Lot> BY_REVERSE_STANDING = Comparator.comparingInt(Lot::rank)
		.reversed()
		.thenComparing(BY_TICKET);

	boolean isTiedWith(Lot other) {
		return rank() == other.rank();
	}

	private int rank() {
		return (this.place != null) ? this.place : Integer.MAX_VALUE;
	}

}
