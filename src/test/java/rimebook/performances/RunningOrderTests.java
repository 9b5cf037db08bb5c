package rimebook.performances;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

import static org.assertj.core.api.Assertions.assertThat;

/** Common practice: the order goes on, whoever was passed over comes after it. */
class RunningOrderTests {

	private final List<PerformanceView> all = new ArrayList<>();

	@Test
	void orderGoesOnBehindTheLastNumberThatWasCalled() {
		skated(1).waits(2).skated(3).waits(4);
		assertThat(next()).isEqualTo(4);
		assertThat(passedOver()).containsExactly(2);
	}

	@Test
	void passedOverTeamsComeAfterAllOthers() {
		waits(1).waits(2).skated(3);
		assertThat(next()).isOne();
	}

	@Test
	void teamThatWaitsByTheRefereesWordComesLast() {
		later(1).skated(2).waits(3);
		assertThat(next()).isEqualTo(3);
		assertThat(passedOver()).isEmpty();
		this.all.remove(2);
		assertThat(next()).isOne();
	}

	@Test
	void nobodyComesNextWhenNobodyWaits() {
		skated(1);
		assertThat(RunningOrder.next(this.all)).isEmpty();
	}

	private int next() {
		return RunningOrder.next(this.all).orElseThrow().startNumber();
	}

	private List<Integer> passedOver() {
		return this.all.stream()
			.filter((one) -> RunningOrder.isPassedOver(one, this.all))
			.map(PerformanceView::startNumber)
			.toList();
	}

	private RunningOrderTests waits(int number) {
		return add(number, PerformanceStatus.WAITING, null, false);
	}

	private RunningOrderTests later(int number) {
		return add(number, PerformanceStatus.WAITING, Instant.EPOCH, true);
	}

	private RunningOrderTests skated(int number) {
		return add(number, PerformanceStatus.CLOSED, Instant.EPOCH, false);
	}

	private RunningOrderTests add(int number, PerformanceStatus status, Instant called, boolean postponed) {
		this.all.add(new PerformanceView(new PerformanceId(UUID.randomUUID()), new SegmentId(UUID.randomUUID()),
				new PerformanceView.Start(new EntryId(UUID.randomUUID()), number, 1),
				new PerformanceView.Course(status, "", 1, null), new PerformanceView.Turn(called, "", postponed), 0));
		return this;
	}

}
