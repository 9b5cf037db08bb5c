package rimebook.audit;

import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
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
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.willAnswer;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

@PageTest(RecordController.class)
@WithMockUser(roles = "REFEREE")
class RecordControllerTests {

	private static final String DIGEST = "3fa9".repeat(16);

	private static final String ID = "0b9f8f6c-0000-4000-8000-000000000001";

	private static final RecordLine LINE = new RecordLine(new RecordLine.Link(12, 2, DIGEST, DIGEST),
			Instant.parse("2026-11-25T13:02:11Z"),
			new RecordLine.Who("Rune Frost", "person:r-7", "referee", "10.0.0.2, Firefox"),
			new RecordLine.Thing("entry", ID, ""), new RecordLine.Change("entry.withdrawn", "entered",
					"<b>withdrawn</b> at /desk/entries/" + ID, "two skaters ill"));

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private RecordReading reading;

	@MockitoBean
	private RecordVerification verification;

	@MockitoBean
	private RecordNames names;

	@MockitoBean
	private RecordExport export;

	@BeforeEach
	void oneLine() {
		given(this.reading.read(RecordReading.Query.of("", "", 1)))
			.willReturn(new RecordReading.Page(List.of(LINE), 1, 1));
		given(this.names.of(List.of(LINE)))
			.willReturn(List.of(new ReadableLine(LINE, "Icefern, Junior", ZoneId.of("Europe/Oslo"))));
		given(this.names.zone()).willReturn(ZoneId.of("America/Toronto"));
		given(this.reading.subjects()).willReturn(List.of("entry"));
		given(this.verification.head()).willReturn(new RecordVerification.Head(12, DIGEST));
	}

	@Test
	void showsWhoDidWhatWhenAndWhy() {
		assertThat(this.mvc.get().uri("/desk/record")).hasStatusOk()
			.bodyText()
			.contains("14:02:11 CET", "25 November 2026", "Rune Frost", "entry withdrawn", "entered", "two skaters ill",
					DIGEST, "12 lines")
			.contains("&lt;b&gt;withdrawn&lt;/b&gt;", "Icefern, Junior", "in the time of America/Toronto")
			.doesNotContain("<b>withdrawn");
	}

	/** Names in what is read; the identities are there for whoever opens them. */
	@Test
	void identitiesStandOnlyWhereTheyAreAskedFor() throws Exception {
		Document page = Jsoup.parse(this.mvc.get().uri("/desk/record").exchange().getResponse().getContentAsString());
		assertThat(page.select(".identities").text()).contains("entry " + ID, "person:r-7", DIGEST);
		page.select(".identities").remove();
		assertThat(page.select(".lines").text())
			.contains("entry withdrawn Icefern, Junior", "withdrawn</b> at /desk/entries/…")
			.doesNotContain(ID, "person:r-7");
	}

	@Test
	void theWholeRecordIsAFile() throws Exception {
		willAnswer((call) -> {
			call.getArgument(1, OutputStream.class).write("{}\n".getBytes(StandardCharsets.UTF_8));
			return null;
		}).given(this.export).writeJson(any(), any());
		assertThat(this.mvc.get().uri("/desk/record/lines.jsonl")).hasStatusOk()
			.hasHeader("Content-Disposition", "attachment; filename=\"record.jsonl\"")
			.bodyText()
			.isEqualTo("{}\n");
	}

	@Test
	void keepsTheSearchInTheLinksToOtherPages() {
		given(this.reading.read(RecordReading.Query.of("entry", "a&b", 2)))
			.willReturn(new RecordReading.Page(List.of(LINE), 101, 3));
		assertThat(this.mvc.get().uri(URI.create("/desk/record?subject=entry&text=a%26b&page=2"))).hasStatusOk()
			.bodyText()
			.contains("/desk/record?subject=entry&amp;text=a%26b&amp;page=3", "value=\"a&amp;b\"", "Page 2 of 3");
	}

	/** By the clock of the rink, and both minutes are meant. */
	@Test
	void looksForOneThingOnePersonOneDeviceAndATime() throws Exception {
		RecordSearch search = new RecordSearch(new RecordSearch.About("entry", ID),
				new RecordSearch.By("person:r-7", "Firefox"),
				new RecordSearch.Span(Instant.parse("2026-11-25T13:00:00Z"), Instant.parse("2026-11-25T13:31:00Z")),
				"");
		given(this.reading.read(new RecordReading.Query(search, 1)))
			.willReturn(new RecordReading.Page(List.of(LINE), 101, 3));
		String query = "subject=entry&id=" + ID + "&person=person:r-7&device=Firefox&from=2026-11-25T08:00"
				+ "&to=2026-11-25T08:30";
		assertThat(this.mvc.get().uri(URI.create("/desk/record?" + query))).hasStatusOk()
			.bodyText()
			.contains("/desk/record/lines.csv?" + query.replace("&", "&amp;").replace(":", "%3A"),
					"/desk/record/lines.jsonl?subject=entry", "Only what changed of this one thing: entry " + ID,
					"value=\"2026-11-25T08:00\"");
		assertThat(finer(query).hasAttr("open")).isTrue();
	}

	/** Most look for words; the fields for the rest would push all lines off a phone. */
	@Test
	void rareFieldsAreOpenOnlyWhereOneIsFilledIn() throws Exception {
		assertThat(finer("").hasAttr("open")).isFalse();
		assertThat(finer("device=Firefox").select("input").eachAttr("name")).containsExactly("person", "device", "from",
				"to");
	}

	private Element finer(String query) throws Exception {
		given(this.reading.read(any())).willReturn(new RecordReading.Page(List.of(LINE), 1, 1));
		return Jsoup.parse(
				this.mvc.get().uri(URI.create("/desk/record?" + query)).exchange().getResponse().getContentAsString())
			.selectFirst(".finer");
	}

	@Test
	void whatWasFoundIsAFileForASpreadsheet() {
		assertThat(this.mvc.get().uri("/desk/record/lines.csv?person=Rune")).hasStatusOk()
			.hasHeader("Content-Disposition", "attachment; filename=\"record-found.csv\"")
			.hasHeader("Content-Type", "text/csv;charset=UTF-8");
	}

	@Test
	void aTimeThatIsNoneIsRefused() {
		assertThat(this.mvc.get().uri("/desk/record?from=yesterday")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("has to be a day and a time such as 2026-11-25T14:30");
	}

	@Test
	void saysThatNothingHasHappenedYet() {
		given(this.reading.read(RecordReading.Query.of("", "", 1))).willReturn(new RecordReading.Page(List.of(), 0, 1));
		given(this.verification.head()).willReturn(new RecordVerification.Head(0, "0".repeat(64)));
		assertThat(this.mvc.get().uri("/desk/record")).hasStatusOk()
			.bodyText()
			.contains("Nothing has happened yet", "No line yet")
			.doesNotContain("<table");
	}

	@Test
	void saysThatNothingFits() {
		given(this.reading.read(RecordReading.Query.of("", "walrus", 1)))
			.willReturn(new RecordReading.Page(List.of(), 0, 1));
		assertThat(this.mvc.get().uri("/desk/record?text=walrus")).bodyText().contains("No line of the record fits");
	}

	@Test
	void answersTheCheck() {
		given(this.verification.verify()).willReturn(new RecordFinding(12, DIGEST, 0, ""));
		given(this.verification.compareStored()).willReturn(
				new StoredCheck.Finding(3, 2, 14, 0, List.of("Version 1 of result r-1: its body was changed.")));
		MvcTestResult answer = this.mvc.post().uri("/desk/record/check").with(csrf()).exchange();
		assertThat(answer).hasStatus3xxRedirection().hasRedirectedUrl("/desk/record");
		assertThat(this.mvc.get().uri("/desk/record").flashAttrs(flash(answer))).bodyText()
			.contains("The chain is whole", "What is stored is not what the lines tell, in 1 place.",
					"<li>Version 1 of result r-1: its body was changed.</li>", "Not compared: passwords");
	}

	@Test
	void saysWhereTheChainIsBroken() {
		given(this.verification.verify()).willReturn(new RecordFinding(2, DIGEST, 3, "this line is missing."));
		MvcTestResult answer = this.mvc.post().uri("/desk/record/check").with(csrf()).exchange();
		assertThat(this.mvc.get().uri("/desk/record").flashAttrs(flash(answer))).bodyText()
			.contains("The chain is broken at line 3: this line is missing.", "2 lines before it");
	}

	@Test
	void aPageThatIsNoNumberIsRefused() {
		assertThat(this.mvc.get().uri("/desk/record?page=x")).hasStatus(HttpStatus.BAD_REQUEST)
			.bodyText()
			.contains("page", "expected form");
	}

	@Test
	@WithMockUser(roles = "ANNOUNCER")
	void isClosedToTheAnnouncer() {
		assertThat(this.mvc.get().uri("/desk/record")).hasStatus(HttpStatus.FORBIDDEN);
	}

	private static Map<String, Object> flash(MvcTestResult answer) {
		return Map.copyOf(answer.getMvcResult().getFlashMap());
	}

}
