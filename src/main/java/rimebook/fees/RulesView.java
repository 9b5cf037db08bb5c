package rimebook.fees;

import java.util.Currency;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.fees.reckoning.Terms;

/**
 * What a competition charges.
 *
 * @param currency {@code null} where nothing was set yet
 * @param defaults for every event that says nothing else
 * @param events what single events say, those that never said anything left out
 */
public record RulesView(@Nullable Currency currency, Stated defaults, Map<EventId, Stated> events) {

	static final RulesView NONE = new RulesView(null, Stated.NOTHING, Map.of());

	public RulesView {
		events = Map.copyOf(events);
	}

	/** Tell whether anything was set. */
	public boolean isGiven() {
		return this.currency != null;
	}

	/**
	 * In which everything is paid.
	 * @throws NullPointerException where nothing was set
	 */
	public Currency paidIn() {
		return Objects.requireNonNull(this.currency);
	}

	/** What holds for an event. */
	public Terms of(EventId event) {
		return own(event).terms().over(this.defaults.terms());
	}

	/** What an event says of its own. */
	public Stated own(EventId event) {
		return this.events.getOrDefault(event, Stated.NOTHING);
	}

	/**
	 * What was set, and as which.
	 *
	 * @param number give it back with a change, so that nobody overwrites another's; 0
	 * where nothing was
	 */
	public record Stated(Terms terms, int number) {

		static final Stated NOTHING = new Stated(Terms.NONE, 0);

	}

}
