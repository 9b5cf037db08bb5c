package rimebook.fees.reckoning;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Currency;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What a team owes, on both sides of every border. */
class ReckoningTests {

	private static final ZoneId RINK = ZoneId.of("Europe/Helsinki");

	private static final Currency EUR = Currency.getInstance("EUR");

	private static final Instant EARLY = there("2027-01-02T10:00:00");

	/**
	 * 220 a team, 6.50 a skater, 60 on top after 31 January; all back until 29 February,
	 * a third until 10 March.
	 */
	private static final Terms TERMS = new Terms(new Terms.Charges(euro(22000), euro(650), euro(6000)),
			until("2028-01-31T23:59:59"),
			new Terms.Withdrawal(until("2028-02-29T18:00:00"), 33, until("2028-03-10T12:00:00")));

	@Test
	void aTeamInTimeIsChargedForItselfAndItsSkaters() {
		Reckoning reckoning = reckon(TERMS, EARLY, null, 16);
		assertThat(reckoning.due()).isEqualTo(euro(22000 + 16 * 650));
		assertThat(reckoning.spoken().english()).isEqualTo("the team 220.00 EUR and 16 skaters at 6.50 EUR");
	}

	@ParameterizedTest
	@CsvSource({ "2028-01-31T23:59:58, 0", "2028-01-31T23:59:59, 0", "2028-01-31T23:59:59.999, 0",
			"2028-02-01T00:00:00, 6000" })
	void theSurchargeBeginsWithTheSecondAfterTheDeadline(String entered, long surcharge) {
		assertThat(reckon(TERMS, there(entered), null, 0).due()).isEqualTo(euro(22000 + surcharge));
	}

	@ParameterizedTest
	@CsvSource({ "2028-02-29T17:59:59, 100", "2028-02-29T18:00:00, 100", "2028-02-29T18:00:00.5, 100",
			"2028-02-29T18:00:01, 33", "2028-03-01T00:00:00, 33", "2028-03-10T12:00:00, 33", "2028-03-10T12:00:01, 0",
			"2029-01-01T00:00:00, 0" })
	void whatComesBackFollowsFromWhenTheTeamWithdraws(String withdrawn, int percent) {
		assertThat(TERMS.withdrawal().back(there(withdrawn))).isEqualTo(percent);
		Reckoning reckoning = reckon(TERMS, EARLY, there(withdrawn), 0);
		assertThat(reckoning.due()).isEqualTo(euro(22000 - 220 * percent));
		assertThat(reckoning.spoken().english()).contains((percent == 100) ? "all of it comes back"
				: (percent == 33) ? "33 % of it come back" : "nothing of it comes back");
	}

	@Test
	void theShareIsOfAllThatWasChargedAndRoundedOnce() {
		// 33 % of 220 + 3 * 6.50 + 60 are 98.835, so 98.84 come back.
		Reckoning reckoning = reckon(TERMS, there("2028-02-10T09:00:00"), there("2028-03-01T09:00:00"), 3);
		assertThat(reckoning.charged()).isEqualTo(euro(29950));
		assertThat(reckoning.back()).isEqualTo(euro(9884));
		assertThat(reckoning.due()).isEqualTo(euro(20066));
	}

	@Test
	void aWithdrawalWithoutARuleGivesNothingBack() {
		Terms terms = new Terms(TERMS.charges(), null, null);
		assertThat(reckon(terms, EARLY, EARLY.plusSeconds(1), 0).due()).isEqualTo(euro(22000));
	}

	@Test
	void whereNoDeadlineIsSetAnEntryAfterClosingIsLate() {
		Terms terms = new Terms(TERMS.charges(), null, null);
		assertThat(Reckoning.of(terms, new Facts(EARLY, true, null, 0, false), EUR).due()).isEqualTo(euro(28000));
		assertThat(Reckoning.of(terms, new Facts(EARLY, false, null, 0, false), EUR).due()).isEqualTo(euro(22000));
		assertThat(Reckoning.of(TERMS, new Facts(EARLY, true, null, 0, false), EUR).due())
			.as("the deadline that was set decides")
			.isEqualTo(euro(22000));
	}

	@Test
	void aTeamThatCameBackIsEnteredAsOfThen() {
		Instant again = there("2028-02-05T08:00:00");
		assertThat(reckon(TERMS, again, null, 0).due()).isEqualTo(euro(28000));
	}

	@Test
	void nobodyOwesForAnEventThatDoesNotTakePlace() {
		Reckoning late = Reckoning.of(TERMS,
				new Facts(there("2028-02-10T09:00:00"), false, there("2028-06-01T09:00:00"), 16, true), EUR);
		assertThat(late.due()).isEqualTo(euro(0));
		assertThat(late.spoken().english()).endsWith("the event does not take place, all of it comes back");
	}

	@Test
	void currenciesWithoutAndWithThreeDigitsAreReckonedInTheirSmallestUnits() {
		Currency yen = Currency.getInstance("JPY");
		Terms terms = new Terms(new Terms.Charges(new Money(12501, yen), null, null), null,
				new Terms.Withdrawal(null, 50, until("2028-03-10T12:00:00")));
		Facts facts = new Facts(EARLY, false, there("2028-03-01T12:00:00"), 0, false);
		assertThat(Reckoning.of(terms, facts, yen).due()).hasToString("6250 JPY");
		Currency dinar = Currency.getInstance("KWD");
		Terms others = new Terms(new Terms.Charges(new Money(12345, dinar), null, null), null, terms.withdrawal());
		assertThat(Reckoning.of(others, facts, dinar).due()).hasToString("6.172 KWD");
	}

	@Test
	void whatAnEventSaysGoesBeforeWhatTheCompetitionSays() {
		Terms own = new Terms(new Terms.Charges(euro(9000), null, euro(0)), null, null);
		Terms both = own.over(TERMS);
		assertThat(both.charges()).isEqualTo(new Terms.Charges(euro(9000), euro(650), euro(0)));
		assertThat(both.withdrawal()).isEqualTo(TERMS.withdrawal());
		assertThat(reckon(both, there("2028-02-10T09:00:00"), null, 2).due()).isEqualTo(euro(10300));
	}

	@Test
	void nothingIsChargedWhereNothingIsSaid() {
		Reckoning reckoning = Reckoning.of(Terms.NONE, new Facts(EARLY, true, null, 16, false), EUR);
		assertThat(reckoning.due()).isEqualTo(euro(0));
		assertThat(reckoning.spoken().english()).isEqualTo("nothing is charged");
	}

	/**
	 * In Finland clocks go from 4 back to 3 on 31 October, and from 3 to 4 on 28 March.
	 */
	@ParameterizedTest
	@CsvSource({ "2027-10-31T03:30:00, 2027-10-31T01:30:00Z", "2027-10-31T02:59:59, 2027-10-30T23:59:59Z",
			"2027-03-28T03:30:00, 2027-03-28T01:30:00Z", "2028-02-29T23:59:59, 2028-02-29T21:59:59Z" })
	void aTermIsThatOfTheClockAtTheRink(String said, Instant second) {
		assertThat(until(said).second()).isEqualTo(second);
		assertThat(until(said).holds(second)).isTrue();
		assertThat(until(said).holds(second.plusSeconds(1))).isFalse();
	}

	private static Reckoning reckon(Terms terms, Instant entered, @Nullable Instant withdrawn, int skaters) {
		return Reckoning.of(terms, new Facts(entered, false, withdrawn, skaters, false), EUR);
	}

	private static Money euro(long cents) {
		return new Money(cents, EUR);
	}

	private static Until until(String there) {
		return Until.at(LocalDateTime.parse(there), RINK);
	}

	private static Instant there(String time) {
		return LocalDateTime.parse(time).atZone(RINK).toInstant();
	}

}
