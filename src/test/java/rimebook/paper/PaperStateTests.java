package rimebook.paper;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import rimebook.panels.SeatId;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.placement.MarkLine;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;

import static org.assertj.core.api.Assertions.assertThat;

/** How far a card has come, told from rows alone. */
class PaperStateTests {

	private static final PaperCards.KeyedCard FIVE_SIX = MarkLine.card(new CardMarks(560, 570));

	private static final PaperCards.KeyedCard FIVE_EIGHT = MarkLine.card(new CardMarks(580, 570));

	private final List<CardKeying> rows = new ArrayList<>();

	private PaperCards.@Nullable HeldCard card;

	@Test
	void nothingKeyedIsMissingOrReceived() {
		assertThat(state().stage()).isEqualTo(PaperState.Stage.MISSING);
		this.card = tablet(FIVE_SIX, 1);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.RECEIVED);
		assertThat(state().isUnsettled()).isFalse();
		assertThat(state().words()).isEmpty();
	}

	@Test
	void oneKeyingWaitsForTheSecondAndNamesWhoKeyed() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		assertThat(state().words()).isEqualTo("keyed once, by Ann; second keying missing");
		keyed("Ann", FIVE_EIGHT, KeyingOutcome.WAITING, 0);
		assertThat(state().voices()).singleElement()
			.satisfies((voice) -> assertThat(voice.marks()).isEqualTo(FIVE_EIGHT));
		assertThat(state().other(new Actor("Ann", "accountant", "test"))).isNull();
		assertThat(state().other(new Actor("Bo", "accountant", "test"))).isNotNull();
	}

	@Test
	void twoThatDifferWaitUntilSomebodySettlesThem() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		keyed("Bo", FIVE_EIGHT, KeyingOutcome.DIFFERS, 0);
		assertThat(state().words()).isEqualTo("keyings differ");
		assertThat(state().voices()).extracting(PaperState.Voice::by)
			.containsExactly(new Speaker.Person("Ann"), new Speaker.Person("Bo"));
		keyed("Cy", FIVE_SIX, KeyingOutcome.SETTLED, 1);
		this.card = new PaperCards.HeldCard(FIVE_SIX, 1, CardOrigin.KEYED, Instant.EPOCH, true);
		assertThat(state()).isEqualTo(new PaperState(PaperState.Stage.RECEIVED, List.of(), 3, 1));
	}

	@Test
	void aTabletThatSendsSomethingElseMeanwhileNeitherWinsNorLoses() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		this.card = tablet(FIVE_EIGHT, 1);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.DIFFER);
		assertThat(state().words()).isEqualTo("keyed otherwise than the tablet sent it");
		assertThat(state().voices()).extracting(PaperState.Voice::by)
			.containsExactly(new Speaker.Person("Ann"), new Speaker.Tablet());
	}

	@Test
	void aTabletThatSendsTheSameIsTheSecondKeying() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		this.card = tablet(FIVE_SIX, 1);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.RECEIVED);
	}

	@Test
	void aTabletIsHeardAfterTheKeyingsWereReceivedToo() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		keyed("Bo", FIVE_SIX, KeyingOutcome.AGREED, 1);
		this.card = new PaperCards.HeldCard(FIVE_SIX, 1, CardOrigin.KEYED, Instant.EPOCH, true);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.RECEIVED);
		this.card = tablet(FIVE_EIGHT, 2);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.DIFFER);
		keyed("Cy", FIVE_EIGHT, KeyingOutcome.SETTLED, 2);
		assertThat(state().stage()).isEqualTo(PaperState.Stage.RECEIVED);
		this.card = tablet(FIVE_EIGHT, 3);
		assertThat(state().stage()).as("the same again").isEqualTo(PaperState.Stage.RECEIVED);
	}

	/** Who keyed before a card was received does not count for the next round. */
	@Test
	void aCardKeyedAnewBeginsAtOne() {
		keyed("Ann", FIVE_SIX, KeyingOutcome.WAITING, 0);
		keyed("Bo", FIVE_SIX, KeyingOutcome.AGREED, 1);
		this.card = new PaperCards.HeldCard(FIVE_SIX, 1, CardOrigin.KEYED, Instant.EPOCH, true);
		keyed("Bo", FIVE_EIGHT, KeyingOutcome.WAITING, 1);
		assertThat(state().words()).isEqualTo("keyed once, by Bo; second keying missing");
		assertThat(state().voices()).hasSize(1);
	}

	@Test
	void whoKeyedUnderAnotherNameIsNobodyElse() {
		Actor ann = new Actor("person:ann", "Ann", "accountant", "test");
		Actor renamed = new Actor("person:ann", "Anna", "referee", "test");
		this.rows.add(new CardKeying(UUID.randomUUID(), new PerformanceId(new UUID(1, 1)),
				new CardKeying.Keyed(new SeatId(new UUID(2, 2)), 1, FIVE_EIGHT),
				new CardKeying.Upshot(KeyingOutcome.WAITING, 0), ann, Instant.EPOCH));
		assertThat(state().other(renamed)).isNull();
		assertThat(state().other(new Actor("person:bo", "Ann", "accountant", "test"))).isNotNull();
	}

	private PaperState state() {
		return PaperState.of(this.rows, this.card);
	}

	private static PaperCards.HeldCard tablet(PaperCards.KeyedCard marks, int sequence) {
		return new PaperCards.HeldCard(marks, sequence, CardOrigin.JUDGE, Instant.EPOCH, true);
	}

	private void keyed(String who, PaperCards.KeyedCard marks, KeyingOutcome outcome, int sequence) {
		this.rows.add(new CardKeying(UUID.randomUUID(), new PerformanceId(new UUID(1, 1)),
				new CardKeying.Keyed(new SeatId(new UUID(2, 2)), this.rows.size() + 1, marks),
				new CardKeying.Upshot(outcome, sequence), new Actor(who, "accountant", "test"), Instant.EPOCH));
	}

}
