package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import jakarta.servlet.AsyncContext;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.WriteListener;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;

class FollowerTests {

	private static final Instant NOON = Instant.parse("2026-02-14T12:00:00Z");

	private final AsyncContext connection = mock();

	private final Line line = new Line();

	private final List<Follower> gone = new ArrayList<>();

	private Follower follower;

	@BeforeEach
	void opensAConnection() throws IOException {
		ServletResponse response = mock();
		given(this.connection.getResponse()).willReturn(response);
		given(response.getOutputStream()).willReturn(this.line);
		this.follower = new Follower(this.connection, NOON, 2000, this.gone::add);
		this.follower.open();
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
		this.follower.beat(NOON.plusSeconds(10));
		this.follower.beat(NOON.plusSeconds(20));
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
		this.follower.beat(NOON);
		this.follower.beat(NOON);
		this.follower.leave();
		assertThat(this.gone).containsExactly(this.follower);
		then(this.connection).should().complete();
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

	private static final class Line extends ServletOutputStream {

		private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

		private boolean ready = true;

		private boolean broken;

		private @Nullable WriteListener listener;

		@Override
		public boolean isReady() {
			return this.ready;
		}

		@Override
		public void setWriteListener(WriteListener listener) {
			this.listener = listener;
		}

		@Override
		public void write(int b) throws IOException {
			if (this.broken) {
				throw new IOException("gone");
			}
			assertThat(this.ready).as("asked before writing").isTrue();
			assertThat(this.listener).isNotNull();
			this.bytes.write(b);
		}

		private String text() {
			return this.bytes.toString(StandardCharsets.UTF_8);
		}

	}

}
