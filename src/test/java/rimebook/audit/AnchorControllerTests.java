package rimebook.audit;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import rimebook.web.PageTest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

@PageTest(AnchorController.class)
@WithMockUser(roles = "REFEREE")
class AnchorControllerTests {

	private static final String DIGEST = "3fa9c0de".repeat(8);

	private static final Instant WRITTEN = Instant.parse("2026-11-25T13:02:11Z");

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private RecordReading reading;

	@MockitoBean
	private RecordNames names;

	@MockitoBean
	private RecordAnchors anchors;

	@MockitoBean
	private AnchorSigning signing;

	@MockitoBean
	private RecordVerification verification;

	@BeforeEach
	void twoVersions() {
		List<RecordLine> lines = List.of(version(40), version(12));
		given(this.reading.read(new RecordReading.Query(RecordSearch.ofVersions(), 1)))
			.willReturn(new RecordReading.Page(lines, 2, 1));
		ZoneId zone = ZoneId.of("Europe/Oslo");
		given(this.names.of(lines))
			.willReturn(lines.stream().map((line) -> new ReadableLine(line, "Junior, Free", zone)).toList());
		given(this.names.zone()).willReturn(zone);
		given(this.anchors.kept())
			.willReturn(List.of(new RecordAnchors.Kept("Tablet of Judge 3, Junior", 20, DIGEST, WRITTEN, true)));
		given(this.anchors.head()).willReturn(Optional.of(Anchor.of(41, DIGEST, WRITTEN)));
		given(this.signing.publicKey()).willReturn(Optional.empty());
		given(this.signing.fault()).willReturn("");
	}

	private static RecordLine version(long number) {
		return new RecordLine(new RecordLine.Link(number, 2, DIGEST, DIGEST), WRITTEN,
				new RecordLine.Who("Rune Frost", "person:r-7", "referee", "test"),
				new RecordLine.Thing("result", "r-1", ""), new RecordLine.Change("result.published", "",
						"Junior, Free, version " + number + ", provisional, after 1 of 2: 1 Icefern", ""));
	}

	@Test
	void tellsWhichVersionsAreCoveredByWhatAndWhatThatProves() {
		assertThat(this.mvc.get().uri("/desk/record/anchors")).hasStatusOk()
			.bodyText()
			.contains("line 41 " + DIGEST + " 2026-11-25T13:02:11.000Z", "Tablet of Judge 3, Junior",
					"Junior, Free, version 12, provisional, after 1 of 2", "nothing that is known of",
					"This list lies in the database itself and proves nothing", "Anchors are not signed.")
			.doesNotContain("1 Icefern");
	}

	@Test
	void showsThePublicKeyOrWhyThereIsNone() {
		given(this.signing.publicKey()).willReturn(Optional.of("-----BEGIN PUBLIC KEY-----"));
		assertThat(this.mvc.get().uri("/desk/record/anchors")).bodyText()
			.contains("-----BEGIN PUBLIC KEY-----", "Anchors are signed.");
		given(this.signing.publicKey()).willReturn(Optional.empty());
		given(this.signing.fault()).willReturn("/stick/record.key: gone");
		assertThat(this.mvc.get().uri("/desk/record/anchors")).bodyText()
			.contains("the key cannot be read: /stick/record.key: gone");
	}

	@Test
	void comparesWhatIsBrought() {
		given(this.verification.compare(List.of(Anchor.of(12, DIGEST, WRITTEN))))
			.willReturn(new AnchorCheck.Finding(new AnchorCheck.Covered(12, 41, 2, 1), 1, false, List.of(), List.of()));
		MvcTestResult answer = this.mvc.post()
			.uri("/desk/record/anchors")
			.param("brought", "# seen\nline 12 " + DIGEST + " 2026-11-25T13:02:11.000Z\n")
			.with(csrf())
			.exchange();
		assertThat(answer).hasRedirectedUrl("/desk/record/anchors");
		assertThat(this.mvc.get().uri("/desk/record/anchors").flashAttrs(answer.getMvcResult().getFlashMap()))
			.bodyText()
			.contains(
					"1 anchor fits, the newest that of line 12: lines 1 to 12 are as they were when it was given out, "
							+ "and with them 1 of 2 published versions. 29 lines that came after it could be written anew");
	}

	@Test
	void whatIsNoAnchorIsRefused() {
		assertThat(this.mvc.post().uri("/desk/record/anchors").param("brought", "line 12\n").with(csrf()))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("holds no line of the record in its line 1");
		assertThat(this.mvc.post().uri("/desk/record/anchors").with(csrf()))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT);
	}

}
