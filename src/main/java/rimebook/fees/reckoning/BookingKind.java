package rimebook.fees.reckoning;

/** What a row of the ledger says. */
public enum BookingKind {

	/** That a team owes so much more, or less where the amount is below zero. */
	OWED,

	/** That the club paid. */
	PAID,

	/** That so much of what a team owes is not asked for. */
	WAIVED,

	/** That the club was given back something of what it had paid. */
	REFUNDED

}
