package rimebook.live;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;

/** Four may follow, three of them from one address. */
class FollowerRegisterTests {

	private static final String HALL = "192.0.2.1";

	private final FollowerRegister followers = new FollowerRegister(Stage.SETTINGS,
			Clock.fixed(Instant.parse("2026-02-14T12:00:00Z"), ZoneOffset.UTC));

	@Test
	void oneAddressDoesNotTakeAllStreams() {
		assertThat(List.of(join(HALL), join(HALL), join(HALL))).allMatch(Optional::isPresent);
		assertThat(join(HALL)).isEmpty();
		assertThat(join("192.0.2.2")).isPresent();
		assertThat(this.followers.count()).isEqualTo(4);
	}

	@Test
	void thereAreNeverMoreThanTheSettingsAllow() {
		assertThat(List.of(join("192.0.2.1"), join("192.0.2.2"), join("192.0.2.3"), join("192.0.2.4")))
			.allMatch(Optional::isPresent);
		assertThat(join("192.0.2.5")).isEmpty();
		assertThat(this.followers.count()).isEqualTo(4);
	}

	@Test
	void whoLeavesMakesRoomOnce() {
		Follower first = join(HALL).orElseThrow();
		join(HALL);
		join(HALL);
		first.leave();
		first.leave();
		assertThat(this.followers.count()).isEqualTo(2);
		assertThat(join(HALL)).isPresent();
		assertThat(join(HALL)).isEmpty();
	}

	@Test
	void aNetworkOfTheNewerProtocolIsOneAddress() {
		for (int i = 1; i <= 3; i++) {
			assertThat(join("2001:db8:0:1:0:0:0:" + i)).isPresent();
		}
		assertThat(join("2001:db8:0:1:9:8:7:6")).isEmpty();
		assertThat(join("2001:db8::1:2:3:4:5")).as("the blank stands for one group").isEmpty();
		assertThat(join("2001:db8:0:2:0:0:0:1")).isPresent();
	}

	@Test
	void whoLeavesIsHungUpOn() {
		Line line = mock();
		this.followers.join("cup", HALL, StreamWish.PLAIN, line);
		this.followers.leaveAll();
		then(line).should().end();
		assertThat(this.followers.follow("cup")).isFalse();
	}

	@ParameterizedTest
	@CsvSource({ "536870912, 2730", "8589934592, 43690", "1000, 1" })
	void anEighthOfTheHeapIsForStreams(long heap, int streams) {
		assertThat(LiveSettings.streamsIn(heap)).isEqualTo(streams);
	}

	private Optional<Follower> join(String address) {
		return this.followers.join("cup", address, StreamWish.PLAIN, mock());
	}

}
