package rimebook.rosters;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.rosters.eligibility.EligibilityRules;

/**
 * What an event asks of its rosters.
 *
 * @param copiedFrom the set that the figures were copied from; empty for none
 * @param whenFewer what the rulebook in force lets follow where fewer are on the ice than
 * asked for, as somebody wrote it down; empty where nobody did
 * @param deadline until when rosters change freely, {@code null} for until the
 * competition runs
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record RulesView(EventId event, String copiedFrom, EligibilityRules rules, String whenFewer,
		@Nullable Instant deadline, int version) {

	/** The version of what was never written down. */
	static final int NONE = -1;

	static RulesView none(EventId event) {
		return new RulesView(event, "", EligibilityRules.NONE, "", null, NONE);
	}

	/** Fewest who are to skate, {@code null} where nothing is asked. */
	public @Nullable Integer leastOnIce() {
		return this.rules.size().leastOnIce();
	}

	/** Tell whether anybody wrote down what the event asks. */
	public boolean isGiven() {
		return this.version != NONE;
	}

	/** As on the record. */
	String inWords() {
		List<String> words = new ArrayList<>();
		EligibilityRules.Size size = this.rules.size();
		add(words, "at least %s on the ice", size.leastOnIce());
		add(words, "at most %s on the ice", size.mostOnIce());
		add(words, "at most %s alternates", size.mostAlternates());
		add(words, "at most %s on the roster", size.rosterLimit());
		EligibilityRules.Ages ages = this.rules.ages();
		if (ages.areAsked()) {
			words.add("ages %s on %s, %d%% of the team%s".formatted(inWords(ages.window()), ages.cutOff(), ages.share(),
					ages.alternatesCount() ? " with alternates" : ""));
			words.add(ages.others().isOpen() ? "" : "others " + inWords(ages.others()));
		}
		else if (!ages.equals(EligibilityRules.NONE.ages())) {
			words.add("no ages (%s, %d%%%s)".formatted(ages.cutOff(), ages.share(),
					ages.alternatesCount() ? " with alternates" : ""));
		}
		add(words, "one team of the event%s", this.rules.sharing().oneTeam() ? "" : null);
		add(words, "%s%% others in a further team of a club", this.rules.sharing().otherSkaters());
		add(words, "membership number%s", this.rules.membershipNumber() ? "" : null);
		add(words, "where fewer skate: %s", this.whenFewer.isEmpty() ? null : this.whenFewer);
		add(words, "rosters until %s", this.deadline);
		add(words, "copied from %s", this.copiedFrom.isEmpty() ? null : this.copiedFrom);
		words.removeIf(String::isEmpty);
		return words.isEmpty() ? "nothing is asked" : String.join("; ", words);
	}

	private static void add(List<String> words, String form, @Nullable Object figure) {
		if (figure != null) {
			words.add(form.formatted(figure));
		}
	}

	private static String inWords(EligibilityRules.Window window) {
		return ((window.youngest() != null) ? "from " + window.youngest() : "")
				+ ((window.youngest() != null && window.oldest() != null) ? " " : "")
				+ ((window.oldest() != null) ? "to " + window.oldest() : "");
	}

}
