package rimebook.web;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

import rimebook.accounts.CodeGuessing;
import rimebook.accounts.DoorRecord;

import static org.assertj.core.api.Assertions.assertThat;

class AttemptFilterTests {

	private static final FilterChain WRONG = (request, response) -> ((HttpServletResponse) response).setStatus(422);

	private static final FilterChain RIGHT = (request, response) -> ((HttpServletResponse) response).setStatus(302);

	private AttemptFilter filter;

	@BeforeEach
	void aFilter() {
		Clock clock = Clock.fixed(Instant.parse("2026-11-28T09:00:00Z"), ZoneOffset.UTC);
		this.filter = new AttemptFilter(new AttemptLimits(clock), new KnownPlaces(),
				new StaticListableBeanFactory().getBeanProvider(CodeGuessing.class),
				new StaticListableBeanFactory().getBeanProvider(DoorRecord.class));
	}

	@Test
	void anAccountIsGuessedAtSlowlyFromHoweverManyAddresses() throws Exception {
		assertThat(stranger(0, WRONG)).isEqualTo(422);
		int tries = 1;
		while (stranger(tries, WRONG) == 422 && tries < 500) {
			tries++;
		}
		assertThat(tries).isEqualTo(60);
	}

	@Test
	void whoSatThereBeforeSignsInWhileStrangersGuess() throws Exception {
		assertThat(at("192.168.4.7", "results.desk", RIGHT)).isEqualTo(302);
		for (int i = 0; i < 100; i++) {
			stranger(i, WRONG);
		}
		assertThat(stranger(101, RIGHT)).isEqualTo(429);
		assertThat(at("192.168.4.7", "results.desk", RIGHT)).isEqualTo(302);
	}

	@Test
	void allDevicesOfOneNetworkGuessTogether() throws Exception {
		for (int i = 0; i < 60; i++) {
			assertThat(at("2001:db8:0:1::" + i, "name" + i, WRONG)).isEqualTo(422);
		}
		assertThat(at("2001:db8:0:1::ffff", "another", WRONG)).isEqualTo(429);
		assertThat(at("2001:db8:0:2::1", "another", WRONG)).isEqualTo(422);
	}

	@Test
	void anEndlessNameIsOneNameAndIsNotKept() throws Exception {
		for (int i = 0; i < 10; i++) {
			assertThat(at("192.168.4.8", "x".repeat(60 + i), WRONG)).isEqualTo(422);
		}
		assertThat(at("192.168.4.8", "x".repeat(4_000_000), WRONG)).isEqualTo(429);
	}

	@Test
	void whoGuessesAtCommentatorsLinksIsStoppedWithAnyRequest() throws Exception {
		for (int i = 0; i < 20; i++) {
			assertThat(commentary((i % 2 == 0) ? "GET" : "POST", "/commentary", 404)).isEqualTo(404);
		}
		assertThat(commentary("GET", "/commentary", 404)).isEqualTo(429);
		assertThat(commentary("GET", "/commentary/some-segment", 404)).isEqualTo(429);
		assertThat(commentary("GET", "/follow/cup", 404)).isEqualTo(404);
	}

	@Test
	void whoHasAGoodLinkMayLookAsOftenAsTheyLike() throws Exception {
		for (int i = 0; i < 100; i++) {
			assertThat(commentary("GET", "/commentary", 200)).isEqualTo(200);
		}
	}

	private int commentary(String method, String path, int status) throws ServletException, IOException {
		MockHttpServletRequest request = new MockHttpServletRequest(method, path);
		request.setRemoteAddr("192.168.4.9");
		MockHttpServletResponse response = new MockHttpServletResponse();
		this.filter.doFilter(request, response, (asked, answer) -> ((HttpServletResponse) answer).setStatus(status));
		return response.getStatus();
	}

	private int stranger(int number, FilterChain door) throws ServletException, IOException {
		return at("10.0." + (number / 200) + "." + (number % 200 + 1), "Results.Desk ", door);
	}

	private int at(String address, String name, FilterChain door) throws ServletException, IOException {
		MockHttpServletRequest request = new MockHttpServletRequest("POST", "/sign-in");
		request.setRemoteAddr(address);
		request.setParameter("signInName", name);
		MockHttpServletResponse response = new MockHttpServletResponse();
		this.filter.doFilter(request, response, door);
		return response.getStatus();
	}

}
