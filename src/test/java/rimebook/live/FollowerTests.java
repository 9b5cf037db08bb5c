package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class FollowerTests {

	private static final Instant NOON = Instant.parse("2026-02-14T12:00:00Z");

	private final Paper line = new Paper();

	private final List<Follower> gone = new ArrayList<>();

	private Follower follower;

	@BeforeEach
	void opensAConnection() {
		this.follower = new Follower(this.line, "192.0.2.1", NOON, 2000, this.gone::add);
	}

	@Test
	void waitsForTheContainerToBegin() {
		this.follower.tell(List.of(signal("a", 1)), NOON);
		assertThat(this.line.text()).isEmpty();
		this.follower.onWritePossible();
		assertThat(this.line.text())
			.startsWith("retry: 2000\n\nevent: moved\ndata: {\"scope\":\"segment\",\"id\":\"a\"");
	}

	@Test
	void keepsOnlyTheNewestForASlowReader() {
		this.follower.onWritePossible();
		this.line.ready = false;
		for (int moment = 1; moment <= 1000; moment++) {
			this.follower.tell(List.of(signal("a", moment)), NOON.plusSeconds(moment));
		}
		this.line.ready = true;
		this.follower.onWritePossible();
		assertThat(this.line.text()).containsOnlyOnce("event: moved").contains("\"moment\":1000");
	}

	@Test
	void knowsSinceWhenSomethingLiesUnread() {
		this.follower.onWritePossible();
		assertThat(this.follower.isUnreadSince(NOON.plusSeconds(60))).isFalse();
		this.line.ready = false;
		this.follower.beat(0, NOON.plusSeconds(10));
		this.follower.beat(0, NOON.plusSeconds(20));
		assertThat(this.follower.isUnreadSince(NOON.plusSeconds(11))).isTrue();
		assertThat(this.follower.isUnreadSince(NOON.plusSeconds(10))).isFalse();
		this.line.ready = true;
		this.follower.onWritePossible();
		assertThat(this.follower.isUnreadSince(NOON.plusSeconds(60))).isFalse();
	}

	@Test
	void brokenLineEndsItOnce() {
		this.follower.onWritePossible();
		this.line.broken = true;
		this.follower.beat(0, NOON);
		this.follower.beat(0, NOON);
		this.follower.leave();
		assertThat(this.gone).containsExactly(this.follower);
		assertThat(this.line.ended).isOne();
	}

	@Test
	void nothingIsWrittenAfterTheEnd() {
		this.follower.onWritePossible();
		this.follower.leave();
		String before = this.line.text();
		this.follower.tell(List.of(signal("a", 1)), NOON);
		assertThat(this.line.text()).isEqualTo(before);
	}

	private static Signal signal(String id, int moment) {
		return new Signal("segment", id, moment, moment, null);
	}

	/** A sign of life says how to spread what is fetched. */
	@Test
	void signOfLifeSaysHowFarToSpread() {
		this.follower.onWritePossible();
		this.follower.beat(500, NOON);
		assertThat(this.line.text()).endsWith("event: alive\ndata: {\"within\":500}\n\n");
	}

	private static final class Paper implements Line {

		private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

		private boolean ready = true;

		private boolean broken;

		private int ended;

		@Override
		public boolean isReady() {
			return this.ready;
		}

		@Override
		public void write(byte[] more) throws IOException {
			if (this.broken) {
				throw new IOException("gone");
			}
			assertThat(this.ready).as("asked before writing").isTrue();
			this.bytes.writeBytes(more);
		}

		@Override
		public void flush() {
			assertThat(this.ready).as("asked before flushing").isTrue();
		}

		@Override
		public void end() {
			this.ended++;
		}

		private String text() {
			return this.bytes.toString(StandardCharsets.UTF_8);
		}

	}

}
