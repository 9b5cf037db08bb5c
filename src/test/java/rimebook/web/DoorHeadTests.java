package rimebook.web;

import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.pages.DoorAnswers;

import static org.assertj.core.api.Assertions.assertThat;

class DoorHeadTests {

	private static final String REST = "Host: rink.example:8080\r\n\r\n";

	@Test
	void readsWhatABrowserAsks() {
		DoorAnswers.Asked asked = asked("""
				GET /follow/fjord-days/junior?part=live&moment=7 HTTP/1.1
				Host: [::1]:8080
				User-Agent: Browser/1.0 (X11; Linux)
				accept-encoding: gzip, br
				Accept-Language: fi-FI, fi;q=0.9
				If-None-Match: "abc"
				Cookie: rimebook=1
				Connection: keep-alive

				""".replace("\n", "\r\n"));
		assertThat(asked).isEqualTo(new DoorAnswers.Asked(false, "/follow/fjord-days/junior", "part=live&moment=7",
				"gzip, br", "fi-FI, fi;q=0.9", "\"abc\""));
	}

	@Test
	void readsAHeadThatIsAskedForAlone() {
		assertThat(asked("HEAD / HTTP/1.1\r\n" + REST)).isEqualTo(new DoorAnswers.Asked(true, "/", "", "", "", ""));
	}

	@Test
	void aProxyMaySayWhoAsks() {
		assertThat(asked("GET / HTTP/1.1\r\nX-Forwarded-For: 10.0.0.7\r\nX-Forwarded-Proto: http\r\n" + REST).path())
			.isEqualTo("/");
	}

	@Test
	void knowsWhoWantsToHangUp() {
		DoorHead head = read("GET / HTTP/1.1\r\nConnection: Close\r\n" + REST);
		assertThat(head).isNotNull();
		assertThat(head.isClose()).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "POST / HTTP/1.1\r\n", "GET / HTTP/1.0\r\n", "GET http://x/ HTTP/1.1\r\n",
			"GET /a b HTTP/1.1\r\n", "GET  / HTTP/1.1\r\n", "get / HTTP/1.1\r\n", "GET / HTTP/1.1 \r\n",
			"GET / HTTP/1.1\r\nContent-Length: 3\r\n", "GET / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n",
			"GET / HTTP/1.1\r\ntransfer-encoding : chunked\r\n", "GET / HTTP/1.1\r\nExpect: 100-continue\r\n",
			"GET / HTTP/1.1\r\nUpgrade: h2c\r\n", "GET / HTTP/1.1\r\nConnection: Upgrade\r\n",
			"GET / HTTP/1.1\r\nConnection: close, x\r\n", "GET / HTTP/1.1\r\nOrigin: http://x\r\n",
			"GET / HTTP/1.1\r\nX-Forwarded-Proto: https\r\n", "GET / HTTP/1.1\r\nIf-Match: x\r\n",
			"GET / HTTP/1.1\r\nHost: other\r\n", "GET / HTTP/1.1\r\nAccept-Encoding: a\r\nAccept-Encoding: b\r\n",
			"GET / HTTP/1.1\r\nA: b\r\n c\r\n", "GET / HTTP/1.1\r\nA\r\n", "GET / HTTP/1.1\r\n: b\r\n",
			"GET / HTTP/1.1\r\nA: b\nc: d\r\n", "GET / HTTP/1.1\r\nA: b\u0000\r\n", "GET / HTTP/1.1\r\nA: \u00e9\r\n" })
	void leavesAllElseToTheServer(String beginning) {
		assertThat(read(beginning + REST)).isNull();
	}

	@ParameterizedTest
	@ValueSource(strings = { "/%66ollow", "/a//b", "/a/../b", "/a/./b", "/a;b", "/a\\b", "//a", "/a#b", "/\u00e9" })
	void leavesPathsThatCouldMeanAnotherToTheServer(String path) {
		DoorHead head = read("GET " + path + " HTTP/1.1\r\n" + REST);
		assertThat((head != null) ? head.asked() : null).isNull();
	}

	@ParameterizedTest
	@ValueSource(strings = { "GET / HTTP/1.1\r\n\r\n", "GET / HTTP/1.1\r\nHost: x", "GET / HTTP/1.1\r\nHost: x\r\n",
			"GET / HTTP/1.1\r\nHost: x\r\n\r\nGET / HTTP/1.1\r\nHost: x\r\n\r\n", "GET / HTTP/1.1\r\nHost: x\r\n\r\nx",
			"GET / HTTP/1.1\r\nHost: x y\r\n\r\n", "GET /", "\r\n\r\n" })
	void readsNothingButOneWholeHead(String text) {
		assertThat(read(text)).isNull();
	}

	private static DoorHead read(String text) {
		byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
		return DoorHead.read(bytes, bytes.length);
	}

	private static DoorAnswers.Asked asked(String text) {
		DoorHead head = read(text);
		assertThat(head).isNotNull();
		return head.asked();
	}

}
