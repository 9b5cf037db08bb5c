package rimebook.live;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

import rimebook.shared.NotFoundException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.BDDMockito.will;
import static org.mockito.BDDMockito.willThrow;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;

@Timeout(20)
class MomentWatchTests {

	private static final MomentWatch.News FROM_ONE_TO_TWO = new MomentWatch.News("cup", moment(2),
			moment(2).since(moment(1)));

	private final MomentReader moments = mock();

	private final List<MomentWatch.News> told = new CopyOnWriteArrayList<>();

	private final FollowerRegister followers = mock();

	private final MomentWatch watch = new MomentWatch(this.moments, this.followers, Stage.SETTINGS,
			Clock.fixed(Instant.parse("2026-02-14T12:00:00Z"), ZoneOffset.UTC));

	@BeforeEach
	void standsAtOne() {
		given(this.moments.read(eq("cup"), any())).willReturn(moment(1));
	}

	@Test
	void manyQuestionsAreOneLook() {
		for (int i = 0; i < 100; i++) {
			assertThat(this.watch.current("cup")).isEqualTo(moment(1));
		}
		then(this.moments).should(times(1)).read("cup", null);
	}

	@Test
	void nudgeMakesItLookAndTell() {
		this.watch.current("cup");
		given(this.moments.read(eq("cup"), any())).willReturn(moment(2));
		assertThat(this.watch.current("cup")).as("nobody told").isEqualTo(moment(1));
		this.watch.nudge();
		assertThat(this.watch.current("cup")).isEqualTo(moment(2));
		assertThat(this.told).as("not by a visitor").isEmpty();
		lookAtAll();
		lookAtAll();
		assertThat(this.told).containsExactly(FROM_ONE_TO_TWO);
	}

	@Test
	void nothingIsToldWhenNothingChanged() {
		this.watch.current("cup");
		lookAtAll();
		assertThat(this.told).isEmpty();
	}

	@Test
	void whatIsPublishedDuringALookIsNotTakenForSeen() throws Exception {
		this.watch.current("cup");
		CountDownLatch reading = new CountDownLatch(1);
		CountDownLatch published = new CountDownLatch(1);
		will((call) -> {
			reading.countDown();
			published.await(10, TimeUnit.SECONDS);
			return moment(1);
		}).willReturn(moment(2)).given(this.moments).read(eq("cup"), any());
		CompletableFuture<Void> slow = CompletableFuture.runAsync(this::lookAtAll);
		reading.await();
		this.watch.nudge();
		CompletableFuture<Moment> visitor = CompletableFuture.supplyAsync(() -> this.watch.current("cup"));
		published.countDown();
		assertThat(visitor.get()).isEqualTo(moment(2));
		slow.get();
	}

	@Test
	void databaseThatIsAwayIsAskedAgain() {
		this.watch.current("cup");
		willThrow(new IllegalStateException("away")).willReturn(moment(2)).given(this.moments).read(eq("cup"), any());
		assertThatExceptionOfType(IllegalStateException.class).isThrownBy(this::lookAtAll);
		lookAtAll();
		assertThat(this.told).containsExactly(FROM_ONE_TO_TWO);
	}

	@Test
	void whatIsNotPublicIsNotWatched() {
		given(this.moments.read(eq("plan"), any())).willThrow(NotFoundException.of("competition", "plan"));
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.watch.current("plan"));
		lookAtAll();
		then(this.moments).should(times(1)).read("plan", null);
	}

	private void lookAtAll() {
		this.watch.lookAtAll(this.told::add);
	}

	private static Moment moment(int count) {
		return new Moment(0, Map.of("f", new Moment.SegmentMoment("f", count, count, null)));
	}

}
