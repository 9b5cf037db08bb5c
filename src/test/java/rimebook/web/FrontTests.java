package rimebook.web;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

import rimebook.pages.DeskEntry;

import static org.assertj.core.api.Assertions.assertThat;

@PageTest({ DeskController.class, ProblemsController.class, ErrorPageController.class })
@Import(WaitingWork.class)
class FrontTests {

	@Autowired
	private MockMvcTester mvc;

	@TestConfiguration(proxyBeanMethods = false)
	static class Entries {

		@Bean
		DeskEntry peopleEntry() {
			return new DeskEntry(1, "/desk/people", "people");
		}

		@Bean
		DeskEntry recordEntry() {
			return new DeskEntry(2, "/desk/record", "record");
		}

	}

	@Test
	void whoeverIsNotSignedInIsLedToTheSignInPage() {
		assertThat(this.mvc.get().uri("/desk")).hasStatus3xxRedirection().hasRedirectedUrl("/sign-in");
	}

	@Test
	@WithMockUser(roles = "REFEREE")
	void theDeskShowsOnlyDoorsThatAreOpen() {
		assertThat(this.mvc.get().uri("/desk")).hasStatusOk()
			.bodyText()
			.contains("href=\"/desk/record\"", "<h1>Desk</h1>", "/sign-out")
			.doesNotContain("href=\"/desk/people\"");
	}

	@Test
	@WithMockUser(roles = "ADMINISTRATOR")
	void theAdministratorSeesEveryDoor() {
		assertThat(this.mvc.get().uri("/desk")).bodyText().contains("href=\"/desk/people\"", "href=\"/desk/record\"");
	}

	@Test
	void aCodeIsExplainedToEverybody() {
		assertThat(this.mvc.get().uri("/problems/stale-version")).hasStatusOk()
			.bodyText()
			.contains("Stale version", "Somebody else changed");
	}

	@Test
	void nonsenseIsNoCode() {
		assertThat(this.mvc.get().uri("/problems/NO_CODE")).hasStatus(HttpStatus.NOT_FOUND)
			.bodyText()
			.contains("Nothing here");
	}

	@Test
	void whereNoDoorIsTheHouseSaysSoToPeople() {
		assertThat(this.mvc.get().uri("/nowhere")).hasStatus(HttpStatus.NOT_FOUND);
	}

	@Test
	void whereNoDoorIsTheHouseSaysSoToPrograms() {
		assertThat(this.mvc.get().uri("/api/nowhere")).hasStatus(HttpStatus.NOT_FOUND)
			.hasContentType(MediaType.APPLICATION_PROBLEM_JSON)
			.bodyJson()
			.extractingPath("$.code")
			.isEqualTo("no-such-page");
	}

	@Test
	void aProgramWithoutSeatIsToldWhatToSend() {
		assertThat(this.mvc.put().uri("/api/cards/1")).hasStatus(HttpStatus.UNAUTHORIZED)
			.hasContentType(MediaType.APPLICATION_PROBLEM_JSON)
			.bodyJson()
			.extractingPath("$.detail")
			.asString()
			.contains("Bearer");
	}

	@Test
	void whereBrowsersAskByThemselvesTheyFindTheSignOfTheHouse() {
		assertThat(this.mvc.get().uri("/favicon.ico")).hasStatusOk().hasForwardedUrl("/img/rimebook.svg");
	}

	/** A browser of a rink without TLS says at each page that it pays no heed to it. */
	@Test
	void onlyWithTlsAPageKeepsItsWindowToItself() {
		assertThat(this.mvc.get().uri("/problems/stale-version")).doesNotContainHeader("Cross-Origin-Opener-Policy");
		assertThat(this.mvc.get().uri("/problems/stale-version").secure(true)).hasHeader("Cross-Origin-Opener-Policy",
				"same-origin");
	}

	@Test
	void everyPageForbidsForeignScripts() {
		assertThat(this.mvc.get().uri("/problems/stale-version")).hasHeader("Content-Security-Policy",
				"default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'")
			.hasHeader("X-Content-Type-Options", "nosniff");
	}

}
