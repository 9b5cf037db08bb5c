package rimebook.rosters.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.rosters.EligibilitySet;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.RulesView;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What an event asks of its rosters, as typed; empty where nothing is asked.
 *
 * @param cutOff year-month-day
 * @param deadline day and time at the rink
 */
record RulesForm(@Nullable String copiedFrom, @Nullable String leastOnIce, @Nullable String whenFewer,
		@Nullable String mostOnIce, @Nullable String mostAlternates, @Nullable String rosterLimit,
		@Nullable String youngest, @Nullable String oldest, @Nullable String othersYoungest,
		@Nullable String othersOldest, @Nullable String cutOff, @Nullable String share,
		@Nullable Boolean alternatesCount, @Nullable Boolean oneTeam, @Nullable String otherSkaters,
		@Nullable Boolean membershipNumber, @Nullable String deadline, @Nullable Integer version) {

	RulesForm {
		alternatesCount = Boolean.TRUE.equals(alternatesCount);
		oneTeam = Boolean.TRUE.equals(oneTeam);
		membershipNumber = Boolean.TRUE.equals(membershipNumber);
	}

	static RulesForm of(RulesView known, ZoneId zone) {
		return of(known.copiedFrom(), known.rules(), known.whenFewer(), known, zone);
	}

	/** The figures of a set, for an event of which that is known. */
	static RulesForm of(EligibilitySet set, EligibilityRules rules, RulesView known, ZoneId zone) {
		return of(set.id(), rules, set.whenFewer(), known, zone);
	}

	private static RulesForm of(String copiedFrom, EligibilityRules rules, String whenFewer, RulesView known,
			ZoneId zone) {
		EligibilityRules.Size size = rules.size();
		EligibilityRules.Ages ages = rules.ages();
		return new RulesForm(copiedFrom, text(size.leastOnIce()), whenFewer, text(size.mostOnIce()),
				text(size.mostAlternates()), text(size.rosterLimit()), text(ages.window().youngest()),
				text(ages.window().oldest()), text(ages.others().youngest()), text(ages.others().oldest()),
				text(ages.cutOff()), String.valueOf(ages.share()), ages.alternatesCount(), rules.sharing().oneTeam(),
				text(rules.sharing().otherSkaters()), rules.membershipNumber(), at(known.deadline(), zone),
				known.version());
	}

	private static String at(@Nullable Instant deadline, ZoneId zone) {
		return (deadline != null) ? deadline.atZone(zone).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString()
				: "";
	}

	private static String text(@Nullable Object figure) {
		return (figure != null) ? figure.toString() : "";
	}

	EventEligibility.SetRules order(EventId event, ZoneId zone) {
		Integer asked = Required.numberOrNothing("share", this.share);
		EligibilityRules rules = new EligibilityRules(
				new EligibilityRules.Size(Required.numberOrNothing("leastOnIce", this.leastOnIce),
						Required.numberOrNothing("mostOnIce", this.mostOnIce),
						Required.numberOrNothing("mostAlternates", this.mostAlternates),
						Required.numberOrNothing("rosterLimit", this.rosterLimit)),
				new EligibilityRules.Ages(
						new EligibilityRules.Window(Required.numberOrNothing("youngest", this.youngest),
								Required.numberOrNothing("oldest", this.oldest)),
						new EligibilityRules.Window(Required.numberOrNothing("othersYoungest", this.othersYoungest),
								Required.numberOrNothing("othersOldest", this.othersOldest)),
						SkaterForm.day("cutOff", this.cutOff), (asked != null) ? asked : 100,
						Boolean.TRUE.equals(this.alternatesCount)),
				new EligibilityRules.Sharing(Boolean.TRUE.equals(this.oneTeam),
						Required.numberOrNothing("otherSkaters", this.otherSkaters)),
				Boolean.TRUE.equals(this.membershipNumber));
		return new EventEligibility.SetRules(event, (this.copiedFrom != null) ? this.copiedFrom : "", rules,
				(this.whenFewer != null) ? this.whenFewer : "", moment(zone),
				(this.version != null) ? this.version : 0);
	}

	private @Nullable Instant moment(ZoneId zone) {
		String typed = (this.deadline != null) ? this.deadline.strip() : "";
		try {
			return typed.isEmpty() ? null : LocalDateTime.parse(typed.replace(' ', 'T')).atZone(zone).toInstant();
		}
		catch (DateTimeException ex) {
			throw RuleViolationException.ofField("field-no-time", "deadline", Sentence.of("rosters.no-time"));
		}
	}

}
