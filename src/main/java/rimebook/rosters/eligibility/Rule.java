package rimebook.rosters.eligibility;

import java.util.Locale;

import rimebook.wording.Sentence;

/** What can be asked of a team and its people, in the order in which it is told. */
public enum Rule {

	/** At least so many are to skate. */
	LEAST_ON_ICE,

	/** At most so many may skate. */
	MOST_ON_ICE,

	/** At most so many may stand by. */
	ALTERNATES,

	/** At most so many may be on the roster in all. */
	ROSTER_LIMIT,

	/** Nobody is on a roster twice under two identities. */
	ONE_PERSON,

	/** A birth date has to be known where ages are looked at. */
	BIRTH_DATE,

	/** Each age has to lie between two bounds. */
	AGE,

	/** So large a share of the team has to be of the age asked for. */
	AGE_SHARE,

	/** Nobody skates in two teams of one event. */
	ONE_TEAM,

	/** Two teams of one club have so large a share of different people. */
	OTHER_SKATERS,

	/** Everybody has a membership number. */
	MEMBERSHIP_NUMBER;

	/** The word by which it is stored and addressed: {@code "least-on-ice"}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** Its name, as a finding begins with it. */
	public Sentence spoken() {
		return Sentence.of("rosters.rule." + word());
	}

}
