package rimebook.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

import rimebook.results.ResultVersion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

@LiveTest
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SignalsIntegrationTests {

	private static final String SIGNALS = "/follow/fjord-days/signals";

	private static final String MOMENTS = "/follow/fjord-days/moments";

	private static final String FREE_SKATING = "/follow/fjord-days/junior/free-skating";

	@Autowired
	private Visitor visitor;

	@Autowired
	private FollowerRegister followers;

	@Autowired
	private Pulse pulse;

	@Autowired
	private RenditionCache renditions;

	private final Stage stage = new Stage();

	private final String free = this.stage.freeSkating.id().toString();

	@BeforeEach
	void afterOneTeam() {
		this.stage.free().skate();
		this.visitor.watch(this.stage);
	}

	@Test
	void streamBeginsWithWhereEverythingStands() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS, "Last-Event-ID", "whatever")) {
			Iterator<String> heard = lines.iterator();
			assertThat(heard.next()).startsWith("retry: ");
			assertThat(next(heard)).contains("\"within\":0");
			assertThat(next(heard)).contains(this.stage.shortProgramme.id().toString(), "\"version\":13");
			assertThat(next(heard)).contains(this.free, "\"version\":1", "\"onIce\":null");
		}
	}

	@Test
	void publicationIsHeardAndThePageHasIt() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			Iterator<String> heard = settled(lines);
			ResultVersion version = this.stage.free().skate();
			this.visitor.publish(version.scopeId(), version.number());
			assertThat(signal(heard, "\"version\":2")).contains(this.free);
			assertThat(this.visitor.get(FREE_SKATING + "?part=live").body()).contains("Version 2");
		}
	}

	/** Everybody fetches when they hear it; nobody should wait for it to be made. */
	@Test
	void whatEverybodyFetchesIsMadeBeforeTheyHear() {
		this.visitor.get(FREE_SKATING);
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			Iterator<String> heard = settled(lines);
			RenditionKey part = new RenditionKey(FREE_SKATING, true, PageLanguage.OF_PROGRAMS);
			ResultVersion version = this.stage.free().skate();
			this.visitor.publish(version.scopeId(), version.number());
			assertThat(signal(heard, "\"version\":2")).contains(this.free);
			assertThat(this.renditions.kept(part).orElseThrow().bytes(false)).asString().contains("Version 2");
		}
	}

	@Test
	void whatDiffersIsToldWithIt() throws IOException {
		String page = this.visitor.get(FREE_SKATING + "?lang=fr").body();
		String tag = Jsoup.parse(page).getElementById("live").attr("data-tag");
		HttpResponse<InputStream> stream = this.visitor.stream(SIGNALS + "?page=" + FREE_SKATING + "&lang=fr",
				"Accept-Encoding", "gzip");
		assertThat(stream.headers().firstValue("Content-Encoding")).hasValue("gzip");
		try (InputStream said = new GZIPInputStream(stream.body())) {
			Iterator<String> heard = settled(Stream.generate(() -> line(said)));
			ResultVersion version = this.stage.free().skate();
			this.visitor.publish(version.scopeId(), version.number());
			String told = Stream.generate(heard::next)
				.dropWhile((line) -> !line.equals("event: part"))
				.takeWhile((line) -> !line.equals("event: moved"))
				.skip(1)
				.map((line) -> line.replaceFirst("^data: ", ""))
				.collect(Collectors.joining("\n"));
			assertThat(told.strip())
				.isEqualTo(this.visitor.get(FREE_SKATING + "?part=live&lang=fr&since=" + tag).body().strip())
				.contains("data-since=\"" + tag + "\"", "Version 2");
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "/follow/other-days/junior", "/desk", "", "/follow/fjord-days/no-such-event" })
	void whoAsksForAPageThatIsNotThereHearsTheSignals(String page) {
		try (Stream<String> lines = this.visitor.lines(SIGNALS + "?page=" + page)) {
			Iterator<String> heard = settled(lines);
			ResultVersion version = this.stage.free().skate();
			this.visitor.publish(version.scopeId(), version.number());
			assertThat(signal(heard, "\"version\":2")).contains(this.free);
		}
	}

	@Test
	void teamOnTheIceIsHeard() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			Iterator<String> heard = settled(lines);
			this.stage.free().call();
			this.visitor.publishIce(this.stage.freeSkating.id());
			assertThat(signal(heard, "\"onIce\":\"0000")).contains(this.free, "\"version\":1");
		}
	}

	@Test
	void changeThatNobodyToldIsHeardToo() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			Iterator<String> heard = settled(lines);
			this.stage.free().skate();
			assertThat(signal(heard, "\"version\":2")).contains(this.free);
		}
	}

	@Test
	void givesSignsOfLife() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			assertThat(lines.filter("event: alive"::equals).limit(3)).hasSize(3);
		}
	}

	@Test
	void stopLetsGoAndStartTakesUpAgain() {
		try (Stream<String> lines = this.visitor.lines(SIGNALS)) {
			Iterator<String> heard = settled(lines);
			this.pulse.stop();
			assertThat(this.pulse.isRunning()).isFalse();
			while (heard.hasNext()) {
				heard.next();
			}
			assertThat(this.followers.follow(Stage.SLUG)).isFalse();
		}
		finally {
			this.pulse.start();
		}
		publicationIsHeardAndThePageHasIt();
	}

	@Test
	void whoLeavesIsForgotten() {
		this.visitor.lines(SIGNALS).close();
		await().untilAsserted(() -> assertThat(this.followers.count()).isZero());
	}

	@Test
	void whoeverFindsNoStreamFreeIsToldWhatToAsk() {
		List<Stream<String>> taken = IntStream.range(0, 20).mapToObj((i) -> this.visitor.lines(SIGNALS)).toList();
		try {
			HttpResponse<String> answer = this.visitor.get(SIGNALS);
			assertThat(answer.statusCode()).isEqualTo(503);
			assertThat(answer.headers().firstValueAsLong("Retry-After")).isPresent();
			assertThat(answer.body()).contains("/follow/fjord-days/moments");
		}
		finally {
			taken.forEach(Stream::close);
		}
	}

	@Test
	void pollSaysWhatTheSignalsSayAndNothingWhenNothingMoved() {
		HttpResponse<String> first = this.visitor.get(MOMENTS);
		assertThat(first.body()).contains(this.free, "\"version\":1", "\"onIce\":null");
		assertThat(first.headers().firstValueAsLong("Rink-Wait")).hasValue(1);
		String tag = first.headers().firstValue("ETag").orElseThrow();
		HttpResponse<String> second = this.visitor.get(MOMENTS, "If-None-Match", tag);
		assertThat(second.statusCode()).isEqualTo(304);
		assertThat(second.headers().firstValue("Connection")).hasValue("close");
		ResultVersion version = this.stage.free().skate();
		this.visitor.publish(version.scopeId(), version.number());
		HttpResponse<String> third = this.visitor.get(MOMENTS, "If-None-Match", tag);
		assertThat(third.statusCode()).isEqualTo(200);
		assertThat(third.body()).contains("\"version\":2");
	}

	/** Byte by byte: readers of text wait for more than has come. */
	private static String line(InputStream said) {
		try {
			ByteArrayOutputStream line = new ByteArrayOutputStream();
			for (int next = said.read(); next != '\n'; next = said.read()) {
				assertThat(next).as("the stream ended").isNotNegative();
				line.write(next);
			}
			return line.toString(StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Past the beginning: what comes next is news. */
	private static Iterator<String> settled(Stream<String> lines) {
		Iterator<String> heard = lines.iterator();
		signal(heard);
		signal(heard);
		return heard;
	}

	/**
	 * The next that says this, until the test is out of time. Whoever has just come may
	 * still be told what was there before.
	 */
	private static String signal(Iterator<String> heard, String said) {
		return Stream.generate(() -> signal(heard)).filter((each) -> each.contains(said)).findFirst().orElseThrow();
	}

	/** The next that is more than a sign of life. */
	private static String signal(Iterator<String> heard) {
		String line = next(heard);
		while (!line.contains("\"scope\"")) {
			line = next(heard);
		}
		return line;
	}

	private static String next(Iterator<String> heard) {
		String line = heard.next();
		while (!line.startsWith("data: ")) {
			line = heard.next();
		}
		return line;
	}

}
