package rimebook.fees.reckoning;

import java.util.Currency;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class BalanceTests {

	private static final Currency EUR = Currency.getInstance("EUR");

	private static final UUID FIRST = new UUID(0, 1);

	private static final UUID SECOND = new UUID(0, 2);

	@Test
	void whatIsOpenIsOwedAndNeitherWaivedNorPaid() {
		Balance balance = of(row(BookingKind.OWED, FIRST, 300), row(BookingKind.OWED, SECOND, 200),
				row(BookingKind.WAIVED, SECOND, 50), row(BookingKind.PAID, null, 120));
		assertThat(balance.open()).isEqualTo(new Money(330, EUR));
		assertThat(balance.credit().isSome()).isFalse();
	}

	@Test
	void whatIsPaidTooMuchIsKeptForTheClubUntilItIsGivenBack() {
		Balance paid = of(row(BookingKind.OWED, FIRST, 300), row(BookingKind.PAID, null, 500));
		assertThat(paid.credit()).isEqualTo(new Money(200, EUR));
		Balance back = of(row(BookingKind.OWED, FIRST, 300), row(BookingKind.PAID, null, 500),
				row(BookingKind.REFUNDED, null, 200));
		assertThat(back.credit()).isEqualTo(new Money(0, EUR));
		assertThat(back.open()).isEqualTo(new Money(0, EUR));
	}

	@Test
	void aWaiverIsOfNoMoreThanTheTeamOwesAndOfNoOtherTeam() {
		Balance withdrawn = of(row(BookingKind.OWED, FIRST, 300), row(BookingKind.WAIVED, FIRST, 300),
				row(BookingKind.OWED, FIRST, -300), row(BookingKind.OWED, SECOND, 200));
		assertThat(withdrawn.waived()).isEqualTo(new Money(0, EUR));
		assertThat(withdrawn.open()).isEqualTo(new Money(200, EUR));
		assertThat(withdrawn.credit()).isEqualTo(new Money(0, EUR));
	}

	@Test
	void aRowThatIsTakenBackCountsNoMore() {
		Balance balance = of(row(BookingKind.OWED, FIRST, 300), row(BookingKind.PAID, null, 300),
				row(BookingKind.PAID, null, -300), row(BookingKind.WAIVED, FIRST, 10),
				row(BookingKind.WAIVED, FIRST, -10));
		assertThat(balance.open()).isEqualTo(new Money(300, EUR));
	}

	@Test
	void nothingStandsForNothing() {
		assertThat(of()).isEqualTo(Balance.none(EUR));
	}

	private static Balance of(Balance.Booking... rows) {
		return Balance.of(List.of(rows), EUR);
	}

	private static Balance.Booking row(BookingKind kind, @Nullable UUID team, long cents) {
		return new Balance.Booking(kind, team, new Money(cents, EUR));
	}

}
