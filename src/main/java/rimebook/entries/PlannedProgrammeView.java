package rimebook.entries;

import java.util.List;

import rimebook.competition.SegmentId;

/**
 * The elements that a team means to skate in one segment.
 *
 * @param codes in order; empty where nothing was planned
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record PlannedProgrammeView(EntryId entry, SegmentId segment, List<String> codes, int version) {

	/** The version of a plan that was never written down. */
	static final int NONE = -1;

	public PlannedProgrammeView {
		codes = List.copyOf(codes);
	}

	static PlannedProgrammeView none(EntryId entry, SegmentId segment) {
		return new PlannedProgrammeView(entry, segment, List.of(), NONE);
	}

}
