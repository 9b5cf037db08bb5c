package rimebook.accounts;

/**
 * A tablet's new hold on a seat.
 *
 * @param seat what it may act for
 * @param token what it must show with every request; kept nowhere else
 * @param waiting whether the token opens nothing before the referee says yes, since the
 * seat's own tablet is alive
 */
public record SeatPairing(SeatGrant seat, String token, boolean waiting) {

	@Override
	public String toString() {
		return "SeatPairing[seat=" + this.seat + ", token=(secret)]";
	}

}
