package rimebook.fees;

import java.util.List;

import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.Balance;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Reckoning;

/**
 * How a club stands with a competition.
 *
 * @param rows of the ledger, in the order in which they were written
 * @param version give it back with a booking, so that nobody books what another did
 */
public record ClubAccount(ClubView club, List<TeamFees> teams, List<LedgerRowView> rows, Balance balance, int version) {

	public ClubAccount {
		teams = List.copyOf(teams);
		rows = List.copyOf(rows);
	}

	/** Tell whether some team owes something else by now than the ledger says. */
	public boolean isUnsettled() {
		return this.teams.stream().anyMatch(TeamFees::isUnsettled);
	}

	/**
	 * What one of its teams is charged.
	 *
	 * @param reckoning by the rules as they are now
	 * @param owed as the ledger has it
	 * @param waived as the ledger has it
	 */
	public record TeamFees(EntryView entry, EventView event, Reckoning reckoning, Money owed, Money waived) {

		/** Tell whether it owes something else by now than the ledger says. */
		public boolean isUnsettled() {
			return !this.reckoning.due().equals(this.owed);
		}

		/** How much of what it owes can still be waived. */
		public Money waivable() {
			return this.owed.minus(this.waived).orNothing();
		}

	}

}
