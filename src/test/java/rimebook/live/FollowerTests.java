package rimebook.live;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.GZIPInputStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class FollowerTests {

	private static final Instant NOON = Instant.parse("2026-02-14T12:00:00Z");

	private static final RenditionKey PAGE = new RenditionKey("/follow/cup", true, PageLanguage.OF_PROGRAMS);

	private static final RenditionKey OTHER_PAGE = new RenditionKey("/follow/cup/a", true, PageLanguage.OF_PROGRAMS);

	private final Paper line = new Paper();

	private final List<Follower> gone = new ArrayList<>();

	private Follower follower;

	@BeforeEach
	void opensAConnection() {
		this.follower = follower(StreamWish.PLAIN);
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

	@Test
	void tellsWhatDiffersOnThePageBeforeTheSignal() {
		this.follower = follower(new StreamWish(PAGE, false));
		this.follower.onWritePossible();
		this.follower.tell(List.of(signal("a", 2)), parts(2), NOON);
		assertThat(this.line.text()).isEqualTo("retry: 2000\n\nevent: part\ndata: <div>\ndata: 2</div>\n\n"
				+ "event: moved\ndata: " + signal("a", 2).json() + "\n\n");
		this.follower.tell(List.of(signal("a", 3)),
				Map.of(OTHER_PAGE, PartEvent.of(Rendition.of("", "x"), List.of(signal("a", 3)))), NOON);
		assertThat(this.line.text()).containsOnlyOnce("event: part").contains("\"moment\":3");
	}

	@Test
	void whoReadsSlowlyIsToldNoDifference() {
		this.follower = follower(new StreamWish(PAGE, false));
		this.follower.onWritePossible();
		this.line.ready = false;
		this.follower.tell(List.of(signal("a", 2)), parts(2), NOON);
		this.follower.tell(List.of(signal("a", 3)), parts(3), NOON);
		this.follower.tell(List.of(signal("a", 4)), parts(4), NOON);
		this.line.ready = true;
		this.follower.onWritePossible();
		assertThat(this.line.text()).doesNotContain("part").contains("\"moment\":4");
	}

	@Test
	void whoMissesADifferenceStillHearsOfAllThatMoved() {
		this.follower = follower(new StreamWish(PAGE, false));
		this.follower.onWritePossible();
		this.line.ready = false;
		this.follower.tell(List.of(signal("a", 2), signal("b", 2)),
				Map.of(PAGE, PartEvent.of(Rendition.of("", "x"), List.of(signal("a", 2), signal("b", 2)))), NOON);
		this.follower.tell(List.of(signal("a", 3)), parts(3), NOON);
		this.line.ready = true;
		this.follower.onWritePossible();
		assertThat(this.line.text()).doesNotContain("part")
			.containsOnlyOnce("\"id\":\"a\",\"moment\":3")
			.containsOnlyOnce("\"id\":\"b\",\"moment\":2");
	}

	/** The same text, whichever way it goes; unpacked by the library of Java. */
	@Test
	void packedStreamSaysTheSame() throws IOException {
		String text = "Pine, Alder & Birch ".repeat(10_000) + "\nend";
		Map<RenditionKey, PartEvent> great = Map.of(PAGE,
				PartEvent.of(Rendition.of("", text), List.of(signal("a", 2))));
		this.follower = follower(new StreamWish(PAGE, true));
		this.follower.onWritePossible();
		this.follower.beat(5, NOON);
		this.follower.tell(List.of(signal("a", 2)), great, NOON);
		this.follower.tell(List.of(signal("a", 3)), parts(3), NOON);
		byte[] packed = this.line.bytes.toByteArray();
		assertThat(packed.length).isLessThan(text.length() / 50);
		Paper plain = new Paper();
		Follower other = new Follower(plain, new StreamWish(PAGE, false), "192.0.2.1", NOON, 2000, this.gone::add);
		other.onWritePossible();
		other.beat(5, NOON);
		other.tell(List.of(signal("a", 2)), great, NOON);
		other.tell(List.of(signal("a", 3)), parts(3), NOON);
		byte[] said = new byte[plain.bytes.size()];
		int count = new GZIPInputStream(new ByteArrayInputStream(packed)).readNBytes(said, 0, said.length);
		assertThat(count).isEqualTo(said.length);
		assertThat(new String(said, StandardCharsets.UTF_8)).isEqualTo(plain.text());
	}

	/** A block holds 65,535 bytes (RFC 1951, 3.2.4). */
	@ParameterizedTest
	@ValueSource(ints = { 0, 1, 0xffff, 0x10000, 200_000 })
	void storedBlocksHoldAnyLength(int length) throws IOException {
		byte[] bytes = new byte[length];
		new Random(length).nextBytes(bytes);
		ByteArrayOutputStream packed = new ByteArrayOutputStream();
		packed.writeBytes(StreamPacking.beginning());
		packed.writeBytes(StreamPacking.stored(bytes));
		packed.writeBytes(StreamPacking.deflated(bytes));
		byte[] both = new byte[2 * length];
		int count = new GZIPInputStream(new ByteArrayInputStream(packed.toByteArray())).readNBytes(both, 0,
				both.length);
		assertThat(count).isEqualTo(both.length);
		assertThat(Arrays.copyOf(both, length)).isEqualTo(bytes);
		assertThat(Arrays.copyOfRange(both, length, both.length)).isEqualTo(bytes);
	}

	private Follower follower(StreamWish wish) {
		return new Follower(this.line, wish, "192.0.2.1", NOON, 2000, this.gone::add);
	}

	private static Map<RenditionKey, PartEvent> parts(int moment) {
		return Map.of(PAGE, PartEvent.of(Rendition.of("", "<div>\n2</div>"), List.of(signal("a", moment))));
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
