package rimebook.tabulation.possible;

import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.possible.PossiblePlaces.PlaceNeed.SegmentFinish;

import static org.assertj.core.api.Assertions.assertThat;

class PossibleWordsTests {

	private static final UnaryOperator<String> NAMES = (entry) -> "Harbour Lights";

	private static final SegmentFinish LOWEST = new SegmentFinish(9, true);

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			1 | true  | 4 | true  | Harbour Lights can still finish 1st to 4th
			1 | true  | 2 | true  | Harbour Lights can still finish 1st or 2nd
			1 | true  | 4 | false | Harbour Lights can still finish 1st and will be no worse than 4th
			1 | false | 4 | true  | Harbour Lights can still finish 4th and will be no better than 1st
			1 | false | 4 | false | Harbour Lights will be no better than 1st and no worse than 4th
			3 | true  | 3 | true  | Harbour Lights is certain of 3rd place
			""")
	void rangeSaysWhichEndIsABound(int best, boolean bestExact, int worst, boolean worstExact, String sentence) {
		PossiblePlaces.PlaceRange range = new PossiblePlaces.PlaceRange(best, bestExact, worst, worstExact);
		PossiblePlaces.Outlook outlook = new PossiblePlaces.Outlook("7", true, range, range);
		assertThat(PossibleWords.inEvent(outlook, NAMES).english()).isEqualTo(sentence + " in the event.");
		assertThat(PossibleWords.inSegment(outlook, NAMES).english()).isEqualTo(sentence + " in this segment.");
	}

	@Test
	void needForVictoryIsSaid() {
		assertThat(words(1, alone(1), alone(1), true))
			.isEqualTo("To win the event, Harbour Lights needs 1st place alone in this segment.");
		assertThat(words(1, shared(2), shared(2), true))
			.isEqualTo("To win the event, Harbour Lights needs 2nd place or better in this segment.");
		assertThat(words(1, alone(2), shared(2), true))
			.isEqualTo("To win the event, Harbour Lights needs 2nd place or better in "
					+ "this segment; 2nd place shared with another team may not be enough.");
		assertThat(words(1, shared(1), alone(3), true)).isEqualTo(
				"To win the event, Harbour Lights needs 3rd place alone or better in this segment; 1st place makes it certain.");
		assertThat(words(1, null, shared(3), false))
			.isEqualTo("To win the event, Harbour Lights needs at the very least 3rd place "
					+ "in this segment; no place makes it certain.");
		assertThat(words(1, shared(2), LOWEST, true))
			.isEqualTo("To win the event, Harbour Lights needs no certain place in this "
					+ "segment, but help from the others; 2nd place or better makes it certain.");
		assertThat(words(1, shared(2), LOWEST, false))
			.isEqualTo("To win the event, Harbour Lights may need no certain place in this "
					+ "segment; 2nd place or better makes it certain.");
	}

	@Test
	void whatIsSettledIsSaid() {
		assertThat(words(1, LOWEST, LOWEST, true)).isEqualTo("Harbour Lights is certain to win the event.");
		assertThat(words(1, null, null, true)).isEqualTo("Harbour Lights can no longer win the event.");
		assertThat(words(2, LOWEST, LOWEST, true))
			.isEqualTo("Harbour Lights is certain of 2nd place or better in the event.");
		assertThat(words(2, null, null, true))
			.isEqualTo("Harbour Lights can no longer finish 2nd or better in the event.");
	}

	@Test
	void needForAnotherPlaceIsSaid() {
		assertThat(words(3, shared(4), shared(4), true)).isEqualTo(
				"For 3rd place or better in the event, Harbour Lights needs 4th place or better in this segment.");
	}

	private static String words(int place, @Nullable SegmentFinish certain, @Nullable SegmentFinish possible,
			boolean exact) {
		return PossibleWords
			.need(new PossiblePlaces.PlaceNeed("7", place, new PossiblePlaces.PlaceNeed.FinishBound(certain, exact),
					new PossiblePlaces.PlaceNeed.FinishBound(possible, exact), LOWEST), true, NAMES)
			.english();
	}

	private static SegmentFinish alone(int place) {
		return new SegmentFinish(place, false);
	}

	private static SegmentFinish shared(int place) {
		return new SegmentFinish(place, true);
	}

}
