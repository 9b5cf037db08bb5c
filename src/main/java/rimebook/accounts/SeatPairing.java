package rimebook.accounts;

/**
 * A tablet's new hold on a seat.
 *
 * @param seat what it may act for
 * @param token what it must show with every request; kept nowhere else
 */
public record SeatPairing(SeatGrant seat, String token) {

	@Override
	public String toString() {
		return "SeatPairing[seat=" + this.seat + ", token=(secret)]";
	}

}
