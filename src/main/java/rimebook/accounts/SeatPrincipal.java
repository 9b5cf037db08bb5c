package rimebook.accounts;

import java.security.Principal;

/**
 * The tablet of a seat as the one that is signed in; its name is the seat's label.
 *
 * @param seat the seat it acts for
 */
public record SeatPrincipal(SeatCodes.Grant seat) implements Principal {

	@Override
	public String getName() {
		return this.seat.label();
	}

}
