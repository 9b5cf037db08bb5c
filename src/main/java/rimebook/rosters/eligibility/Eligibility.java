package rimebook.rosters.eligibility;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Compares a roster with the rules of its event. */
public final class Eligibility {

	private final EligibilityRules rules;

	private final Team team;

	private final List<Finding> findings = new ArrayList<>();

	private Eligibility(EligibilityRules rules, Team team) {
		this.rules = rules;
		this.team = team;
	}

	/**
	 * Everything that the rules do not allow, by rule and then in the order of the
	 * roster; empty where all is well.
	 */
	public static List<Finding> findings(EligibilityRules rules, Team team, Neighbours neighbours) {
		Eligibility check = new Eligibility(rules, team);
		check.size();
		check.twice();
		check.ages();
		if (rules.sharing().oneTeam()) {
			neighbours.sameEvent().forEach(check::otherTeam);
		}
		neighbours.clubBefore().forEach(check::clubBefore);
		check.numbers();
		check.findings.sort(Comparator.comparing(Finding::rule));
		return List.copyOf(check.findings);
	}

	/** How old somebody is on a day, in full years; less than 0 for who is not born. */
	public static int age(LocalDate birthDate, LocalDate day) {
		return birthDate.isAfter(day) ? -1 : Period.between(birthDate, day).getYears();
	}

	private void size() {
		EligibilityRules.Size size = this.rules.size();
		int onIce = this.team.onIce().size();
		if (size.leastOnIce() != null && onIce < size.leastOnIce()) {
			add(Rule.LEAST_ON_ICE, Sentence.of("rosters.finding.least-on-ice", onIce, size.leastOnIce()));
		}
		most(Rule.MOST_ON_ICE, onIce, size.mostOnIce());
		most(Rule.ALTERNATES, this.team.alternates(), size.mostAlternates());
		most(Rule.ROSTER_LIMIT, this.team.members().size(), size.rosterLimit());
	}

	private void most(Rule rule, int there, @Nullable Integer most) {
		if (most != null && there > most) {
			add(rule, Sentence.of("rosters.finding." + rule.word(), there, most));
		}
	}

	private void twice() {
		Map<String, Team.Member> seen = new HashMap<>();
		for (Team.Member member : this.team.members()) {
			String person = member.name().toLowerCase(Locale.ROOT) + " " + member.birthDate();
			if (member.birthDate() != null && seen.putIfAbsent(person, member) != null) {
				add(Rule.ONE_PERSON, member, Sentence.of("rosters.finding.one-person", member.name()));
			}
		}
	}

	private void ages() {
		EligibilityRules.Ages ages = this.rules.ages();
		LocalDate day = ages.cutOff();
		if (day == null || !ages.areAsked()) {
			return;
		}
		List<Team.Member> counted = ages.alternatesCount() ? this.team.members() : this.team.onIce();
		int maybeInside = 0;
		for (Team.Member member : counted) {
			LocalDate born = member.birthDate();
			if (born == null) {
				add(Rule.BIRTH_DATE, member, Sentence.of("rosters.finding.birth-date", member.name()));
			}
			boolean inside = born == null || ages.window().holds(age(born, day));
			maybeInside += inside ? 1 : 0;
			if (born != null && !inside) {
				outside(member, age(born, day), day);
			}
		}
		int needed = ages.needed(counted.size());
		if (ages.share() < 100 && maybeInside < needed) {
			add(Rule.AGE_SHARE, Sentence.of("rosters.finding.age-share", maybeInside, counted.size(),
					spoken(ages.window()), day(day), needed, ages.share()));
		}
	}

	/** Where a share is enough, those outside it have bounds of their own. */
	private void outside(Team.Member member, int age, LocalDate day) {
		EligibilityRules.Ages ages = this.rules.ages();
		EligibilityRules.Window bounds = (ages.share() < 100) ? ages.others() : ages.window();
		if (!bounds.holds(age)) {
			add(Rule.AGE, member,
					Sentence.of("rosters.finding.age", member.name(), Math.max(age, 0), day(day), spoken(bounds)));
		}
	}

	private void otherTeam(Team other) {
		Set<String> there = other.people();
		this.team.members()
			.stream()
			.filter((member) -> there.contains(member.id()))
			.forEach((member) -> add(Rule.ONE_TEAM, member,
					Sentence.of("rosters.finding.one-team", member.name(), other.name())));
	}

	private void clubBefore(Team other) {
		Integer share = this.rules.sharing().otherSkaters();
		int all = this.team.members().size();
		if (share == null || all == 0) {
			return;
		}
		Set<String> there = other.people();
		int others = (int) this.team.members().stream().filter((member) -> !there.contains(member.id())).count();
		int needed = (all * share + 99) / 100;
		if (others < needed) {
			add(Rule.OTHER_SKATERS,
					Sentence.of("rosters.finding.other-skaters", others, all, other.name(), needed, share));
		}
	}

	private void numbers() {
		if (this.rules.membershipNumber()) {
			this.team.members()
				.stream()
				.filter((member) -> member.membershipNumber().isBlank())
				.forEach((member) -> add(Rule.MEMBERSHIP_NUMBER, member,
						Sentence.of("rosters.finding.membership-number", member.name())));
		}
	}

	private void add(Rule rule, Sentence what) {
		this.findings.add(Finding.ofTeam(rule, what));
	}

	private void add(Rule rule, Team.Member member, Sentence what) {
		this.findings.add(Finding.of(rule, member.id(), what));
	}

	private static Sentence spoken(EligibilityRules.Window window) {
		Integer youngest = window.youngest();
		Integer oldest = window.oldest();
		if (youngest != null && oldest != null) {
			return Sentence.of("rosters.ages.between", youngest, oldest);
		}
		return (youngest != null) ? Sentence.of("rosters.ages.from", youngest)
				: Sentence.of("rosters.ages.to", (oldest != null) ? oldest : 0);
	}

	private static Sentence day(LocalDate day) {
		return Sentence.of("rosters.day", day.getDayOfMonth(), day.getMonthValue(), String.valueOf(day.getYear()));
	}

}
