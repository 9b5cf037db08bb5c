package rimebook.entries;

import java.util.List;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.shared.ConflictException;

/** What a segment asks of planned elements. One that asks nothing any more stays. */
@Entity
class RequiredProgramme {

	@Id
	@Column(name = "segment_id")
	private UUID segment;

	@Version
	private @Nullable Integer version;

	/** The set that it was copied from; empty for none. */
	private String copiedFrom = "";

	/** As {@link RequiredList#written()} has them. */
	private String asked = "";

	private @Nullable Integer leastElements;

	private @Nullable Integer mostElements;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected RequiredProgramme() {
	}

	RequiredProgramme(SegmentId segment) {
		this.segment = segment.value();
	}

	/** Put another list in place of the one that was seen. */
	void write(String copiedFrom, RequiredList list, int seen) {
		ConflictException.requireSeen("required", seen, this.version);
		this.copiedFrom = copiedFrom;
		this.asked = list.written();
		this.leastElements = list.least();
		this.mostElements = list.most();
	}

	RequiredElements.RequiredView view() {
		List<RequiredList.Line> lines = this.asked.lines().map(RequiredProgramme::line).toList();
		return new RequiredElements.RequiredView(new SegmentId(this.segment), this.copiedFrom,
				new RequiredList(lines, this.leastElements, this.mostElements),
				(this.version != null) ? this.version : RequiredElements.RequiredView.NONE);
	}

	/** Without the rule set: a list stays what it was written as. */
	private static RequiredList.Line line(String written) {
		String[] parts = written.split(" ");
		String[] figures = parts[1].split("-");
		return new RequiredList.Line(List.of(parts[0].split("/")), Integer.parseInt(figures[0]),
				Integer.parseInt(figures[figures.length - 1]));
	}

}
