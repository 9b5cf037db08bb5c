package rimebook.accounts.web;

import java.util.Optional;
import java.util.UUID;

import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatTakeovers;
import rimebook.shared.RuleViolationException;
import rimebook.web.PageTest;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.never;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

@PageTest({ JoinController.class, SeatPairingApiController.class })
class JoinTests {

	private static final SeatCodes.Grant SEAT = new SeatCodes.Grant(
			UUID.fromString("01a20000-0000-7000-8000-000000000003"), "Judge 3, Junior");

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private SeatCodes seats;

	@MockitoBean
	private SeatTakeovers takeovers;

	@BeforeEach
	void oneSeatHasACode() {
		given(this.seats.pair(anyString(), anyString(), any(), any())).willThrow(
				new RuleViolationException("seat-code-unknown", "code", Sentence.said("No seat has this code.")));
		given(this.seats.pair(eq("ABCD 2345"), anyString(), any(), any()))
			.willReturn(new SeatCodes.Pairing(SEAT, "a-token", false));
		given(this.seats.grantOf(any())).willReturn(Optional.empty());
		given(this.seats.grantOf("a-token")).willReturn(Optional.of(SEAT));
	}

	@Test
	void theCodeOfTheSlipIsTypedAlready() {
		assertThat(this.mvc.get().uri("/judge?code=ABCD2345")).hasStatusOk()
			.bodyText()
			.contains("value=\"ABCD2345\"", "Take the seat")
			.doesNotContain("This tablet has the seat");
	}

	@Test
	void aTabletThatHasASeatIsShownTheWayBack() {
		assertThat(this.mvc.get().uri("/judge").cookie(new Cookie("rimebook-seat", "a-token"))).hasStatusOk()
			.bodyText()
			.contains("This tablet has the seat Judge 3, Junior.", "href=\"/judge/card\"");
	}

	@Test
	void takingASeatLeavesACookieThatNoScriptReads() {
		MvcTestResult taken = post("ABCD 2345");
		assertThat(taken).hasStatus3xxRedirection().hasRedirectedUrl("/judge/card");
		assertThat(taken.getResponse().getHeader(HttpHeaders.SET_COOKIE))
			.startsWith("rimebook-seat=a-token; Path=/; Max-Age=604800;")
			.contains("HttpOnly", "SameSite=Strict")
			.doesNotContain("Secure");
	}

	@Test
	void aSecondTabletWaitsForTheRefereesWord() {
		given(this.seats.pair(eq("SECOND"), anyString(), any(), any()))
			.willReturn(new SeatCodes.Pairing(SEAT, "another-token", true));
		MvcTestResult asked = post("SECOND");
		assertThat(asked).hasRedirectedUrl("/judge/waiting");
		assertThat(asked.getResponse().getHeader(HttpHeaders.SET_COOKIE))
			.startsWith("rimebook-seat-asked=another-token; Path=/judge;");
		Cookie cookie = new Cookie("rimebook-seat-asked", "another-token");
		given(this.takeovers.look("another-token")).willReturn(SeatTakeovers.Answer.WAITING,
				SeatTakeovers.Answer.REFUSED, SeatTakeovers.Answer.TAKEN);
		MvcTestResult waiting = this.mvc.get().uri("/judge/waiting").cookie(cookie).exchange();
		assertThat(waiting).hasStatusOk().bodyText().contains("The referee is asked");
		assertThat(waiting.getResponse().getHeader("Refresh")).isEqualTo("2");
		MvcTestResult refused = this.mvc.get().uri("/judge/waiting").cookie(cookie).exchange();
		assertThat(refused).bodyText().contains("The referee said no");
		assertThat(refused.getResponse().getHeader("Refresh")).isNull();
		MvcTestResult taken = this.mvc.get().uri("/judge/waiting").cookie(cookie).exchange();
		assertThat(taken).hasRedirectedUrl("/judge/card");
		assertThat(taken.getResponse().getHeaders(HttpHeaders.SET_COOKIE))
			.anyMatch((given) -> given.startsWith("rimebook-seat=another-token; Path=/;"));
	}

	@Test
	void aProgramThatWaitsIsToldByTheStatus() {
		given(this.seats.pair(eq("SECOND"), anyString(), any(), any()))
			.willReturn(new SeatCodes.Pairing(SEAT, "another-token", true));
		assertThat(pair("{\"code\":\"SECOND\"}")).hasStatus(HttpStatus.ACCEPTED);
	}

	@Test
	void aWrongCodeIsShownAgainWithTheReason() {
		MvcTestResult refused = post("WRONG<1>");
		assertThat(refused).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("No seat has this code.", "value=\"WRONG&lt;1&gt;\"", "aria-invalid=\"true\"");
		assertThat(refused.getResponse().getHeaders(HttpHeaders.SET_COOKIE))
			.noneMatch((cookie) -> cookie.startsWith("rimebook-seat"));
	}

	@Test
	void anEmptyCodeIsNamed() {
		assertThat(post(" ")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT).bodyText().contains("“Code” is empty");
		then(this.seats).should(never()).pair(anyString(), anyString(), any(), any());
	}

	private MvcTestResult post(String code) {
		return this.mvc.post().uri("/judge").with(csrf()).param("code", code).exchange();
	}

	@Test
	void aProgramIsGivenTheTokenAndTheSeat() {
		assertThat(pair("{\"code\":\"ABCD 2345\"}")).hasStatusOk().bodyJson().isStrictlyEqualTo("""
				{"token":"a-token","seat":"01a20000-0000-7000-8000-000000000003","label":"Judge 3, Junior"}""");
	}

	@Test
	void aProgramWithAWrongCodeIsRefused() {
		assertThat(pair("{\"code\":\"NO\"}")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.hasContentType(MediaType.APPLICATION_PROBLEM_JSON)
			.bodyJson()
			.extractingPath("$.code")
			.isEqualTo("seat-code-unknown");
	}

	@Test
	void aProgramWithoutACodeIsToldWhatIsMissing() {
		assertThat(pair("{}")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyJson()
			.extractingPath("$.errors[0].field")
			.isEqualTo("code");
	}

	@Test
	void aProgramThatSendsNoJsonIsTold() {
		assertThat(pair("code=ABCD2345")).hasStatus(HttpStatus.BAD_REQUEST)
			.bodyJson()
			.extractingPath("$.code")
			.isEqualTo("malformed-json");
	}

	@Test
	void aFormOfAnotherSiteIsNotJson() {
		assertThat(this.mvc.post()
			.uri("/api/seat-pairings")
			.contentType(MediaType.APPLICATION_FORM_URLENCODED)
			.content("code=ABCD2345")).hasStatus(HttpStatus.UNSUPPORTED_MEDIA_TYPE);
		then(this.seats).should(never()).pair(anyString(), anyString(), any(), any());
	}

	private MvcTestResult pair(String body) {
		return this.mvc.post()
			.uri("/api/seat-pairings")
			.contentType(MediaType.APPLICATION_JSON)
			.content(body)
			.exchange();
	}

}
