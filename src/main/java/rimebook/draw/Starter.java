package rimebook.draw;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryView;

/** An entry that starts, with its place before the segment if it has one. */
record Starter(EntryView entry, @Nullable Integer place) {

	Lot lot(String seed, String segment) {
		DrawTicket ticket = DrawTicket.of(seed, segment, this.entry.team().name(), this.entry.team().club().name());
		return Lot.of(this.entry.id(), this.place, ticket);
	}

	String inWords() {
		return this.entry.team().name() + " (" + this.entry.team().club().name() + ")";
	}

}
