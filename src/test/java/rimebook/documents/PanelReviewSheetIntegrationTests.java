package rimebook.documents;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;
import rimebook.competition.Cancellations;
import rimebook.panels.SeatView;
import rimebook.performances.PanelChanges;
import rimebook.performances.PerformanceView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.review.EventReview;
import rimebook.review.PanelReviews;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.documents.PrintedText.words;
import static rimebook.testsupport.SmallCompetition.REFEREE;

/** The one document that is the referee's alone. */
@WholeApplication
class PanelReviewSheetIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Documents documents;

	@Autowired
	private PanelReviews reviews;

	private SmallCompetition day;

	private SeatView substitute;

	@BeforeEach
	void aSegmentOfWhichOneMarkIsPointedOut() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.day.open(1);
		this.substitute = this.day.seatSubstitute();
		mark(500, 510, 390);
		mark(480, 490, 470);
	}

	private void mark(int... hundredths) {
		PerformanceView performance = this.day.callNext(1);
		List<SeatView> seats = this.day.seats();
		for (int i = 0; i < hundredths.length; i++) {
			this.day.send(performance, seats.get(i), 1, new CardMarks(hundredths[i], hundredths[i]));
		}
		this.day.send(performance, this.substitute, 1, new CardMarks(300, 300));
		this.day.close(performance);
	}

	/** Row by row and mark by mark, the paper has what the page shows. */
	@Test
	void saysWhatThePageSays() {
		String text = text(ref(0), Locale.ENGLISH);
		Visitor.Page page = referee().open(page());
		List<Element> rows = page.document().select("table.review tbody tr");
		assertThat(rows).hasSize(9);
		for (Element row : rows) {
			assertThat(text).contains(row.select("th, td").eachText().stream().map(PrintedText::words).toList());
			assertThat(text).contains(words(String.join("", row.select("td").eachText())));
		}
		List<String> marks = page.document().select(".pointed-out li").eachText();
		assertThat(marks).hasSize(2).allSatisfy((mark) -> assertThat(text).contains(words(mark)));
		assertThat(page.document().select("#legend dd span").eachText())
			.allSatisfy((says) -> assertThat(text).contains(words(says)));
		assertThat(text).contains(words("For the referee alone"), words("This is no proof of an error"),
				words("Not every result here is signed"), words("Provisional"));
	}

	@Test
	void saysItInEveryLanguage() {
		EventReview review = this.reviews.of(this.day.event().id());
		for (String language : List.of("en", "fi", "fr")) {
			Locale locale = Locale.forLanguageTag(language);
			String text = text(ref(0), locale);
			review.segments().get(0).aspects().forEach((aspect) -> {
				assertThat(text).contains(words(aspect.name().in(locale)));
				aspect.judges()
					.forEach((judge) -> assertThat(text).contains(words(judge.who().in(locale)),
							words(((judge.lack() != null) ? judge.lackSpoken() : judge.pairsSpoken()).in(locale)
									+ judge.distance().awaySpoken().in(locale)
									+ judge.distance().aboveSpoken().in(locale))));
				aspect.outlying().forEach((mark) -> assertThat(text).contains(words(mark.spoken().in(locale))));
			});
			assertThat(text).doesNotContain("NaN", "??", "review.");
		}
	}

	@Test
	void sameVersionIsTheSameBytesWhateverCameAfterIt() {
		DocumentRef second = ref(2);
		assertThat(event().number()).isEqualTo(2);
		byte[] before = pdf(second);
		mark(400, 410, 420);
		byte[] third = pdf(ref(3));
		assertThat(pdf(second)).isEqualTo(before);
		assertThat(third).isNotEqualTo(before);
		assertThat(pdf(ref(0))).isEqualTo(third);
	}

	@Test
	void aVersionWithoutACancelledSegmentStaysWithoutIt() {
		mark(400, 410, 420);
		this.day.open(2);
		this.day.skateNext(2);
		byte[] with = pdf(ref(0));
		int version = event().number();
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		cancellations.cancel(this.day.segment(2), "A power cut", REFEREE);
		DocumentRef result = DocumentRef.of(DocumentKind.FINAL_RESULT, this.day.event().id(), version + 1);
		byte[] without = pdf(ref(version + 1));
		byte[] placed = pdf(result);
		assertThat(pdf(ref(version))).isEqualTo(with);
		cancellations.bringBack(this.day.segment(2), REFEREE);
		assertThat(event().number()).isEqualTo(version + 2);
		assertThat(pdf(ref(version))).isEqualTo(with);
		assertThat(pdf(ref(version + 1))).isEqualTo(without);
		assertThat(pdf(result)).isEqualTo(placed);
		String free = words(this.day.event().segments().get(1).name());
		assertThat(text(ref(version + 1), Locale.ENGLISH)).doesNotContain(free);
		assertThat(text(ref(version + 2), Locale.ENGLISH)).contains(free);
	}

	/** Whoever sits there now had not sat there then. */
	@Test
	void aSubstituteStandsOnTheSheetsFromThenOnOnly() {
		mark(400, 410, 420);
		byte[] before = pdf(ref(3));
		this.context.getBean(PanelChanges.class)
			.takeOver(this.day.segment(1), this.day.seats().get(1).id(), "A broken tablet", REFEREE);
		assertThat(event().number()).isEqualTo(4);
		assertThat(text(ref(4), Locale.ENGLISH)).contains(words("Judge 2 (the substitute)"));
		assertThat(pdf(ref(3))).isEqualTo(before);
	}

	@Test
	void saysWhichStateOfTheRecordItIsAndHasAFingerprintOfItsOwn() {
		ResultVersion version = event();
		Anchor line = this.context.getBean(RecordAnchors.class)
			.ofVersion(version.scopeId(), version.number(), version.fingerprint())
			.orElseThrow();
		String fingerprint = this.documents.fingerprint(ref(0)).orElseThrow();
		assertThat(text(ref(0), Locale.ENGLISH)).contains("Record:line" + line.line() + line.digest().substring(0, 32),
				fingerprint.substring(0, 8));
		assertThat(fingerprint).isNotEqualTo(version.fingerprint());
	}

	@Test
	void nobodyElsePrintsOrComparesIt() {
		String half = this.documents.fingerprint(ref(2)).orElseThrow().substring(0, 32);
		String about = "/panel-review/" + this.day.event().id() + "/2/";
		List<String> paths = List.of("/desk/documents" + about + "sheet.pdf",
				"/desk/documents" + about + "compare/" + half,
				"/desk/documents/panel%2Dreview/" + this.day.event().id() + "/2/sheet.pdf");
		Map<Role, Visitor> crew = Stream.of(Role.values())
			.filter((role) -> role != Role.JUDGE)
			.collect(Collectors.toMap((role) -> role, (role) -> Crew.visitor(this.context, role)));
		crew.forEach((role, visitor) -> paths
			.forEach((path) -> assertThat(visitor.bytes(path).statusCode()).as(role + " " + path)
				.isEqualTo((role == Role.REFEREE || role == Role.ADMINISTRATOR) ? 200 : 403)));
		Visitor referee = Objects.requireNonNull(crew.get(Role.REFEREE));
		assertThat(referee.open(paths.get(1)).text()).contains("The data are the same");
		assertThat(referee.bytes("/follow/paper" + about + half).statusCode()).isEqualTo(404);
	}

	@Test
	void itIsNeitherOfferedNorBound() {
		assertThat(this.documents.offered(this.day.event())).extracting(DocumentRef::kind)
			.isNotEmpty()
			.doesNotContain(DocumentKind.PANEL_REVIEW);
		assertThat(PrintedText.of(this.documents.printAll(this.day.event(), PaperSize.A4, Locale.ENGLISH).bytes()))
			.contains(words("Result of the segment"))
			.doesNotContain(words("Panel review"), "Kendall");
		assertThat(referee().open("/desk/documents/" + this.day.competition().id())
			.document()
			.select("a[href*=panel-review]")).isEmpty();
		Visitor.Page review = referee().open(page());
		assertThat(review.document().select("form[action^=/desk/documents/panel-review/] button")).hasSize(1);
	}

	@Test
	void thereIsNoneBeforeAnythingIsPublished() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		assertThat(
				referee().bytes("/desk/documents/panel-review/" + this.day.event().id() + "/0/sheet.pdf").statusCode())
			.isEqualTo(404);
	}

	private Visitor referee() {
		return Crew.visitor(this.context, Role.REFEREE);
	}

	private String page() {
		return "/desk/review/events/" + this.day.event().id();
	}

	private ResultVersion event() {
		return this.context.getBean(Standings.class).latest(this.day.event().id()).orElseThrow();
	}

	private DocumentRef ref(int version) {
		return DocumentRef.of(DocumentKind.PANEL_REVIEW, this.day.event().id(), version);
	}

	private byte[] pdf(DocumentRef ref) {
		return this.documents.print(ref, PaperSize.A4, Locale.ENGLISH).bytes();
	}

	private String text(DocumentRef ref, Locale language) {
		return PrintedText.of(this.documents.print(ref, PaperSize.A4, language).bytes());
	}

}
