package rimebook.entries.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.RequiredElements;
import rimebook.entries.RequiredSets;
import rimebook.shared.Required;

/** What a segment asks of planned elements, as typed; empty where nothing is asked. */
record RequiredForm(@Nullable String copiedFrom, @Nullable String lines, @Nullable String least, @Nullable String most,
		@Nullable Integer version) {

	static RequiredForm of(RequiredElements.RequiredView known) {
		return new RequiredForm(known.copiedFrom(), known.written(), text(known.list().least()),
				text(known.list().most()), known.version());
	}

	/** A ready list, for a segment of which that is known. */
	static RequiredForm of(RequiredSets.RequiredSet set, RequiredElements.RequiredView known) {
		return new RequiredForm(set.id(), set.lines(), text(set.least()), text(set.most()), known.version());
	}

	private static String text(@Nullable Integer figure) {
		return (figure != null) ? figure.toString() : "";
	}

	RequiredElements.SetRequired order(SegmentId segment) {
		return new RequiredElements.SetRequired(segment, (this.copiedFrom != null) ? this.copiedFrom : "",
				(this.lines != null) ? this.lines : "", Required.numberOrNothing("least", this.least),
				Required.numberOrNothing("most", this.most), (this.version != null) ? this.version : 0);
	}

}
