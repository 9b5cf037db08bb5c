package rimebook.tabulation;

/**
 * What becomes of the places a disqualified team had. The team itself never keeps one. In
 * the examples B, 2nd of A B C, is disqualified after the segment.
 */
public enum DisqualifiedPlaces {

	/**
	 * Segment places stay ({@code A 1, C 3}), final places close up ({@code A 1, C 2})
	 * (default).
	 */
	CLOSE_FINAL_PLACES,

	/**
	 * Ordinals are made without the team, so segment and final places close up
	 * ({@code A 1, C 2}).
	 */
	CLOSE_ALL_PLACES,

	/** Nobody moves, in the segment or in the end ({@code A 1, C 3}). */
	LEAVE_GAPS

}
