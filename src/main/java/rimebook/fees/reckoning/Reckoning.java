package rimebook.fees.reckoning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * What a team owes by the fees that were set, and how that comes about. Where its event
 * does not take place it owes nothing, whatever became of it: common practice.
 *
 * @param items what is charged
 * @param back what comes back of that
 * @param how why something comes back or not, empty for a team that takes part
 */
public record Reckoning(List<Item> items, Money charged, Money back, Sentence how) {

	private static final int ALL = 100;

	public Reckoning {
		items = List.copyOf(items);
	}

	/** Reckon it. */
	public static Reckoning of(Terms terms, Facts facts, Currency currency) {
		List<Item> items = items(terms, facts);
		Money charged = items.stream().map(Item::amount).reduce(Money.none(currency), Money::plus);
		if (facts.cancelled()) {
			return new Reckoning(items, charged, charged, Sentence.of("fees.back.cancelled"));
		}
		Instant withdrawn = facts.withdrawn();
		if (withdrawn == null) {
			return new Reckoning(items, charged, Money.none(currency), Sentence.NONE);
		}
		int percent = (terms.withdrawal() != null) ? terms.withdrawal().back(withdrawn) : 0;
		return new Reckoning(items, charged, charged.share(percent), how(percent));
	}

	private static Sentence how(int percent) {
		if (percent == 0) {
			return Sentence.of("fees.back.none");
		}
		return (percent == ALL) ? Sentence.of("fees.back.all") : Sentence.of("fees.back.share", percent);
	}

	private static List<Item> items(Terms terms, Facts facts) {
		List<Item> items = new ArrayList<>();
		add(items, What.TEAM, 1, terms.charges().perTeam());
		add(items, What.SKATERS, facts.skaters(), terms.charges().perSkater());
		add(items, What.LATE, isLate(terms, facts) ? 1 : 0, terms.charges().late());
		return items;
	}

	private static boolean isLate(Terms terms, Facts facts) {
		return (terms.lateAfter() != null) ? !terms.lateAfter().holds(facts.entered()) : facts.afterClosing();
	}

	private static void add(List<Item> items, What what, int count, @Nullable Money each) {
		if (each != null && each.isSome() && count > 0) {
			items.add(new Item(what, count, each));
		}
	}

	/** What it owes, never below zero. */
	public Money due() {
		return this.charged.minus(this.back);
	}

	/** How that comes about: "the team 220.00 EUR and 16 skaters at 6.50 EUR". */
	public Sentence spoken() {
		Sentence what = this.items.isEmpty() ? Sentence.of("fees.nothing-charged")
				: Sentence.of("fees.charged", this.items.stream().map(Item::spoken).toList());
		return this.how.isEmpty() ? what : Sentence.of("fees.charged-and-back", what, this.how);
	}

	/** For what something is charged. */
	public enum What {

		/** The team as such. */
		TEAM,

		/** Everybody who skates in it. */
		SKATERS,

		/** That it was entered late. */
		LATE

	}

	/**
	 * Something that is charged.
	 *
	 * @param count how many times, 1 at least
	 * @param each for one of them
	 */
	public record Item(What what, int count, Money each) {

		/** All of them together. */
		public Money amount() {
			return this.each.times(this.count);
		}

		/** In words: "16 skaters at 6.50 EUR". */
		public Sentence spoken() {
			return switch (this.what) {
				case TEAM -> Sentence.of("fees.item.team", this.each.toString());
				case SKATERS -> Sentence.of("fees.item.skaters", this.count, this.each.toString());
				case LATE -> Sentence.of("fees.item.late", this.each.toString());
			};
		}

	}

}
