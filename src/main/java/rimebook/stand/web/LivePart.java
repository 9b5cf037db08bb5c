package rimebook.stand.web;

/**
 * A part of the stand that follows by itself. The page sends back the print of what it
 * shows, and gets only the parts whose print is another: what did not change is never
 * touched, and nothing is lost that somebody has open or in focus.
 */
sealed interface LivePart permits OrderPart, ClockPart, SeatsPart, ToldPart, DeductionsPart, DecisionPart, PaperPart,
		RulingsPart, FewPart, ReopenedPart, PanelPart, GuessesPart, SetAsidePart, BoundPart, StandingPart, AlarmsPart {

	/** A short print of everything shown; the same on every node and after a restart. */
	default String print() {
		return Integer.toHexString(toString().hashCode());
	}

}
