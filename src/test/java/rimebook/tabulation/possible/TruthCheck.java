package rimebook.tabulation.possible;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.possible.PossiblePlaces.PlaceNeed.SegmentFinish;

import static org.assertj.core.api.Assertions.assertThat;

/** Compares what is said with what is true, and counts how much of it is exact. */
final class TruthCheck {

	private int answers;

	private int exact;

	private int exactInSegment;

	private int teams;

	void check(RandomSituation situation, Truth truth, PossiblePlaces said) {
		for (PossiblePlaces.Outlook outlook : said.teams()) {
			String about = outlook + " in " + situation;
			int team = truth.index(outlook.entry());
			check(outlook.segment(), truth.segment(), team, about);
			this.teams++;
			this.exactInSegment += outlook.segment().isExact() ? 1 : 0;
			PossiblePlaces.PlaceRange event = outlook.event();
			assertThat(event != null).as(about).isEqualTo(truth.event().worst(team) > 0);
			if (event != null) {
				check(event, truth.event(), team, about);
			}
		}
		said.needs().forEach((need) -> check(need, truth, need + " in " + situation));
	}

	private void check(PossiblePlaces.PlaceRange range, Extremes truth, int team, String about) {
		if (range.bestExact()) {
			assertThat(range.best()).as(about).isEqualTo(truth.best(team));
		}
		if (range.worstExact()) {
			assertThat(range.worst()).as(about).isEqualTo(truth.worst(team));
		}
		assertThat(range.best()).as(about).isLessThanOrEqualTo(truth.best(team));
		assertThat(range.worst()).as(about).isGreaterThanOrEqualTo(truth.worst(team));
		count(range.bestExact());
		count(range.worstExact());
	}

	private void check(PossiblePlaces.PlaceNeed need, Truth truth, String about) {
		Extremes places = truth.byFinish(need.entry());
		int certain = number(need.certain().finish(), truth);
		int possible = number(need.possible().finish(), truth);
		for (int finish = Finish.of(1, false); finish < Finish.count(truth.size()); finish++) {
			if (finish <= certain) {
				assertThat(places.worst(finish)).as(about).isLessThanOrEqualTo(need.place());
			}
			if (finish > possible) {
				assertThat(places.best(finish)).as(about).isGreaterThan(need.place());
			}
		}
		if (need.certain().exact() && !need.isSafe()) {
			assertThat(places.worst(Math.max(certain + 1, Finish.of(1, false)))).as(about).isGreaterThan(need.place());
		}
		if (need.possible().exact() && possible > 0) {
			assertThat(places.best(possible)).as(about).isLessThanOrEqualTo(need.place());
		}
		count(need.certain().exact());
		count(need.possible().exact());
	}

	private static int number(@Nullable SegmentFinish finish, Truth truth) {
		return (finish == null) ? 0 : Finish.of(finish.place(), finish.shared() && finish.place() < truth.size());
	}

	private void count(boolean isExact) {
		this.answers++;
		this.exact += isExact ? 1 : 0;
	}

	int answers() {
		return this.answers;
	}

	int exactAnswers() {
		return this.exact;
	}

	/** Of a hundred answers, how many are exact. */
	int exactPercent() {
		return 100 * this.exact / this.answers;
	}

	boolean isExactInEverySegment() {
		return this.exactInSegment == this.teams;
	}

}
