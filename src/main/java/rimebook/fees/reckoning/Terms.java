package rimebook.fees.reckoning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * What is charged and what comes back; {@code null} where nothing is said of it.
 *
 * @param lateAfter until when an entry is in time; where nothing is said, one is late
 * that was accepted after entries had closed
 */
public record Terms(Charges charges, @Nullable Until lateAfter, @Nullable Withdrawal withdrawal) {

	/** Nothing is said of anything. */
	public static final Terms NONE = new Terms(new Charges(null, null, null), null, null);

	/** These, and the others where these say nothing. */
	public Terms over(Terms others) {
		return new Terms(this.charges.over(others.charges), or(this.lateAfter, others.lateAfter),
				or(this.withdrawal, others.withdrawal));
	}

	/** Tell whether nothing is said. */
	public boolean isEmpty() {
		return equals(NONE);
	}

	/** All of it in one line, for the record; times are UTC. */
	public String inWords() {
		List<String> words = new ArrayList<>();
		add(words, "team ", this.charges.perTeam());
		add(words, "skater ", this.charges.perSkater());
		add(words, "late ", this.charges.late());
		add(words, "late after ", (this.lateAfter != null) ? this.lateAfter.second() : null);
		add(words, "", (this.withdrawal != null) ? this.withdrawal.inWords() : null);
		return words.isEmpty() ? "nothing" : String.join("; ", words);
	}

	private static void add(List<String> words, String what, @Nullable Object said) {
		if (said != null) {
			words.add(what + said);
		}
	}

	private static <T> @Nullable T or(@Nullable T one, @Nullable T other) {
		return (one != null) ? one : other;
	}

	/**
	 * The amounts.
	 *
	 * @param perTeam for the team as such
	 * @param perSkater for everybody who skates in it
	 * @param late on top where it was entered late
	 */
	public record Charges(@Nullable Money perTeam, @Nullable Money perSkater, @Nullable Money late) {

		Charges over(Charges others) {
			return new Charges(or(this.perTeam, others.perTeam), or(this.perSkater, others.perSkater),
					or(this.late, others.late));
		}

	}

	/**
	 * What comes back to a team that withdraws, of all that it was charged: everything
	 * for a while, then a share, then nothing.
	 *
	 * @param allBack until when everything does, {@code null} never
	 * @param share so many of a hundred, 1 to 99; 0 where there is no such time
	 * @param shareUntil until when the share does, {@code null} never
	 */
	public record Withdrawal(@Nullable Until allBack, int share, @Nullable Until shareUntil) {

		private static final int ALL = 100;

		/** How many of a hundred come back to whoever withdraws at that moment. */
		public int back(Instant withdrawn) {
			if (this.allBack != null && this.allBack.holds(withdrawn)) {
				return ALL;
			}
			return (this.shareUntil != null && this.shareUntil.holds(withdrawn)) ? this.share : 0;
		}

		private String inWords() {
			List<String> words = new ArrayList<>();
			add(words, "all back until ", (this.allBack != null) ? this.allBack.second() : null);
			add(words, this.share + " % back until ", (this.shareUntil != null) ? this.shareUntil.second() : null);
			return String.join(", ", words);
		}

	}

}
