package rimebook.documents;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.MutablePropertySources;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.panels.SeatKind;
import rimebook.published.Standing;
import rimebook.published.StandingText;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.documents.PrintedText.words;

@WholeApplication
class DocumentsIntegrationTests {

	private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.FRENCH, Locale.forLanguageTag("fi"));

	@LocalServerPort
	private int port;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Documents documents;

	@Autowired
	private Standings standings;

	@Autowired
	private RecordAnchors record;

	@Autowired
	private JdbcClient database;

	@Test
	void sheetsOfAMarkedSegmentSayWhatItsStandingSays() {
		PaperDay day = PaperDay.placement(this.context);
		day.post();
		ResultVersion version = day.segment();
		for (Locale language : LANGUAGES) {
			Figures figures = new Figures(language);
			String result = text(day.ref(DocumentKind.SEGMENT_RESULT), language);
			String detail = text(day.ref(DocumentKind.JUDGES_DETAIL), language);
			for (Standing.Row row : version.standing().rows()) {
				assertThat(result).contains(words(row.team() + row.club()));
				assertThat(detail).contains(words(figures.place(row.place()) + row.team()),
						words(row.why().in(language)));
				assertThat(detail).contains(line(row, figures, Standing.Card::first),
						line(row, figures, Standing.Card::second));
			}
			assertThat(result).contains(version.fingerprint().substring(0, 8), words(day.small.competition().name()),
					words(day.small.competition().facts().rulebook()));
			day.small.seats().forEach((seat) -> assertThat(result).contains(words(seat.official().name())));
			SegmentTimes times = times(day);
			assertThat(result).contains(words(figures.dayOfYearAndTime(times.posted(), day.small.competition().zone())),
					words(figures.dayOfYearAndTime(times.until(), day.small.competition().zone())));
		}
	}

	/** The marks of a team in the order of the judges, as they stand in one line. */
	private static String line(Standing.Row row, Figures figures, ToIntFunction<Standing.Card> mark) {
		StringBuilder line = new StringBuilder();
		row.cards().forEach((card) -> line.append(figures.mark(mark.applyAsInt(card))));
		return line.toString();
	}

	private SegmentTimes times(PaperDay day) {
		return this.standings.postings(day.small.segment(1))
			.stream()
			.map((posting) -> new SegmentTimes(posting.postedAt(), posting.calculationUntil()))
			.findFirst()
			.orElseThrow();
	}

	@Test
	void detailOfPointsShowsEveryGradeMeanAndScore() {
		PaperDay day = PaperDay.points(this.context);
		Figures figures = new Figures(Locale.ENGLISH);
		String detail = text(day.ref(DocumentKind.JUDGES_DETAIL), Locale.ENGLISH);
		for (Standing.Row row : day.segment().standing().rows()) {
			Standing.Score score = row.score();
			score.elementLines().forEach((element) -> assertThat(detail).contains(words(grades(element, figures))));
			score.componentLines()
				.forEach((component) -> assertThat(detail)
					.contains(words(figures.points(component.mean()) + figures.points(component.points()))));
			score.deductionLines()
				.forEach((deduction) -> assertThat(detail)
					.contains(words(deduction.name() + " (2) −" + figures.points(deduction.points()))));
			assertThat(detail).contains(words("Elements %s + components %s − deductions %s = %s".formatted(
					figures.points(score.elements()), figures.points(score.components()),
					figures.points(score.deducted()), figures.points(score.total()))));
			assertThat(text(day.ref(DocumentKind.SEGMENT_RESULT), Locale.ENGLISH)).contains(
					words(row.startNumber() + figures.points(score.elements()) + figures.points(score.components())));
		}
	}

	@Test
	void finalResultMedalsAndCertificatesOfPointsSayWhatTheStandingSays() {
		PaperDay day = PaperDay.points(this.context);
		day.sign();
		for (Locale language : LANGUAGES) {
			Figures figures = new Figures(language);
			String result = text(day.ref(DocumentKind.FINAL_RESULT), language);
			String medals = text(day.ref(DocumentKind.MEDALS), language);
			String certificates = text(day.ref(DocumentKind.CERTIFICATES), language);
			for (Standing.Row row : day.event().standing().rows()) {
				String way = words(row.why().in(language)) + figures.points(row.segmentTotals().get(0)) + "("
						+ words(figures.nth(row.place())) + ")" + figures.points(row.total());
				assertThat(result).contains(figures.place(row.place()), words(row.team() + row.club()) + way);
				assertThat(medals).contains(words(row.team() + row.club()) + figures.points(row.total()));
				assertThat(certificates).contains(words(row.team() + row.club() + day.small.event().name()));
			}
		}
	}

	private static String grades(Standing.Score.ElementLine element, Figures figures) {
		StringBuilder line = new StringBuilder(figures.points(element.base()));
		element.grades()
			.forEach((mark) -> line.append(mark.use().startsWith("DROPPED") ? "(" + figures.grade(mark.given()) + ")"
					: figures.grade(mark.given())));
		if (element.grades().isEmpty()) {
			line.append("–".repeat(5));
		}
		return line.append(figures.points(element.mean())).append(figures.points(element.score())).toString();
	}

	@Test
	void finalResultMedalsAndCertificatesNameSharedPlaces() {
		PaperDay day = PaperDay.placement(this.context);
		assertThat(this.documents.offered(day.small.event())).extracting(DocumentRef::kind)
			.contains(DocumentKind.FINAL_RESULT, DocumentKind.MEDALS)
			.doesNotContain(DocumentKind.CERTIFICATES);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(
					() -> text(DocumentRef.of(DocumentKind.CERTIFICATES, day.small.event().id(), 0), Locale.ENGLISH))
			.withMessageContaining("once the result is signed");
		day.sign();
		Standing standing = day.event().standing();
		assertThat(standing.rows()).extracting(Standing.Row::place).containsExactly(1, 1, 3, 4, null);
		Figures figures = new Figures(Locale.ENGLISH);
		String result = text(day.ref(DocumentKind.FINAL_RESULT), Locale.ENGLISH);
		String medals = text(day.ref(DocumentKind.MEDALS), Locale.ENGLISH);
		byte[] certificates = pdf(day.ref(DocumentKind.CERTIFICATES), Locale.ENGLISH);
		for (Standing.Row row : standing.rows()) {
			assertThat(result).contains(words(row.team() + row.club()), words(row.why().in(Locale.ENGLISH)),
					figures.total(row.total()));
			assertThat(medals.contains(words(row.team() + row.club())))
				.isEqualTo(row.place() != null && row.place() < 4);
			assertThat(PrintedText.of(certificates).contains(words(row.team()))).isEqualTo(row.place() != null);
		}
		assertThat(medals).contains("1Gold", "3Bronze", "shared").doesNotContain("Silver");
		assertThat(PrintedText.sheets(certificates)).isEqualTo(4);
		assertThat(result).contains("Official", words(day.event().fingerprint().substring(0, 8)));
	}

	@Test
	void theCeremonyGoesFromTheThirdToTheFirstAndSaysWhatIsNotSure() {
		PaperDay day = PaperDay.placement(this.context);
		String provisional = text(day.ref(DocumentKind.CEREMONY), Locale.ENGLISH);
		assertThat(provisional).contains(words("PROVISIONAL. Referee and accountant have not signed"),
				words("Nobody is entered yet"));
		day.sign();
		day.handOver("Medals: Ada Birch, president\nFlowers: Ole Fir");
		List<Standing.Row> rows = day.event().standing().rows();
		assertThat(rows).extracting(Standing.Row::place).containsExactly(1, 1, 3, 4, null);
		for (Locale language : LANGUAGES) {
			String sheet = text(day.ref(DocumentKind.CEREMONY), language);
			assertThat(sheet).contains(words("Medals: Ada Birch, president"), words("Flowers: Ole Fir"))
				.doesNotContain(words(rows.get(3).team() + rows.get(3).club()));
			assertThat(List.of(2, 0, 1)).isSortedAccordingTo(
					Comparator.comparingInt((at) -> sheet.indexOf(words(rows.get(at).team() + rows.get(at).club()))));
		}
		String sheet = text(day.ref(DocumentKind.CEREMONY), Locale.ENGLISH);
		assertThat(sheet)
			.contains(words("There is no second place: 2 teams share the first."),
					words("“And 2 teams share first place, each with the gold medals:”"), "Mainice")
			.doesNotContain("PROVISIONAL", words("Nobody is entered yet"));
		day.reopen();
		assertThat(text(day.ref(DocumentKind.CEREMONY), Locale.ENGLISH)).contains(words("OPEN AGAIN."))
			.doesNotContain("PROVISIONAL.");
		assertThat(this.documents.fingerprint(day.ref(DocumentKind.CEREMONY))).isPresent();
	}

	@Test
	void thereIsNoCeremonyBeforeAnybodyHasAPlace() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		assertThat(this.documents.offered(day.event())).extracting(DocumentRef::kind)
			.doesNotContain(DocumentKind.CEREMONY);
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> text(DocumentRef.of(DocumentKind.CEREMONY, day.event().id(), 0), Locale.ENGLISH));
	}

	@Test
	void finalResultShowsTheWayFromThePlacesOfTheSegmentsToTheTotal() {
		SmallCompetition day = SmallCompetition.running(this.context, 4, 3);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		day.skateRest(2);
		Standing standing = this.standings.latest(day.event().id()).orElseThrow().standing();
		for (Locale language : LANGUAGES) {
			Figures figures = new Figures(language);
			String result = text(DocumentRef.of(DocumentKind.FINAL_RESULT, day.event().id(), 0), language);
			standing.segments()
				.forEach((segment) -> assertThat(result)
					.contains(words(segment.name() + "×" + figures.plain(segment.factor()))));
			for (Standing.Row row : standing.rows()) {
				assertThat(result).contains(words(row.why().in(language)) + figures.place(row.segmentPlaces().get(0))
						+ figures.place(row.segmentPlaces().get(1)) + figures.total(row.total()));
			}
		}
	}

	/** Whatever kind it is, on its first sheet and on its last. */
	@Test
	void everyDocumentSaysWhatItIsOfAndHowItCanBeCompared() throws Exception {
		PaperDay placement = PaperDay.placement(this.context);
		placement.rule();
		placement.post();
		placement.protest();
		placement.plan();
		Set<DocumentKind> seen = EnumSet.noneOf(DocumentKind.class);
		for (DocumentRef ref : this.documents.offered(placement.small.event())) {
			expectHead(placement, ref, "5 judges");
			seen.add(ref.kind());
		}
		PaperDay points = PaperDay.points(this.context);
		points.sign();
		for (DocumentRef ref : this.documents.offered(points.small.event())) {
			expectHead(points, ref, "Points");
			seen.add(ref.kind());
		}
		assertThat(seen).isEqualTo(EnumSet.complementOf(EnumSet.of(DocumentKind.PANEL_REVIEW)));
	}

	private void expectHead(PaperDay day, DocumentRef ref, String rules) throws Exception {
		byte[] pdf = pdf(ref, Locale.ENGLISH);
		String kind = ref.kind().word();
		assertThat(PrintedText.emptySheets(pdf)).as(kind).isEmpty();
		String text = PrintedText.of(pdf);
		int sheets = PrintedText.sheets(pdf);
		boolean official = ref.version() > 0 && day.small.event().isJudgedByPoints();
		assertThat(text).as(kind)
			.contains(words(day.small.competition().name()), words(day.small.event().name()), words(rules),
					words(day.small.competition().facts().rulebook()))
			.contains((ref.version() > 0) ? "Version" + ref.version() + "of" : "Asof")
			.contains((ref.version() == 0) ? "Asitstands" : official ? "Official" : "Provisional")
			.contains("Page1of" + sheets, "Page" + sheets + "of" + sheets, "Record:line");
		if (ref.kind().about() == DocumentKind.About.SEGMENT) {
			assertThat(text).as(kind).contains(words(day.small.event().segments().get(0).name()));
		}
		String fingerprint = this.documents.fingerprint(ref).orElseThrow().substring(0, 32);
		assertThat(text).as(kind).contains("Fingerprintofthedata:" + fingerprint);
		assertThat(PrintedText.scanned(pdf)).as(kind)
			.endsWith("/follow/paper/%s/%s/%d/%s".formatted(kind, ref.subject(), ref.version(), fingerprint));
	}

	@Test
	void aVersionIsToldOfAsItWasWhateverIsWrittenAnew() {
		PaperDay day = PaperDay.points(this.context);
		day.sign();
		Map<DocumentRef, byte[]> before = ofVersions(day);
		assertThat(before).hasSize(6);
		CompetitionView competition = day.small.competition();
		DraftCompetition facts = competition.facts();
		this.context.getBean(Competitions.class)
			.change(competition.id(), competition.version(),
					new DraftCompetition("Renamed " + facts.name(), "Elsewhere", ZoneId.of("Pacific/Auckland"),
							facts.firstDay().minusDays(9), facts.lastDay().plusDays(9), "Another rulebook"),
					SmallCompetition.SECRETARY);
		assertSame(before);
		assertThat(text(DocumentRef.of(DocumentKind.PANEL, day.small.event().id(), 0), Locale.ENGLISH))
			.contains("Elsewhere");
	}

	/** Also where it was published before addresses were kept. */
	@Test
	void aVersionLeadsWhereItLedWhateverAddressThisHouseHas() {
		PaperDay day = PaperDay.placement(this.context);
		DocumentRef earlier = publishedEarlier(day.small, day.segment().standing());
		this.context.getBean(PaperAddresses.class).keepThoseLacking();
		Map<DocumentRef, byte[]> before = ofVersions(day);
		before.put(earlier, pdf(earlier, Locale.ENGLISH));
		MutablePropertySources sources = ((ConfigurableEnvironment) this.context.getEnvironment()).getPropertySources();
		sources.addFirst(new MapPropertySource("another", Map.of("local.server.port", "4711")));
		try {
			this.context.getBean(PaperAddresses.class).keepThoseLacking();
			assertSame(before);
			assertThat(PrintedText.scanned(pdf(day.ref(DocumentKind.PANEL), Locale.ENGLISH))).contains(":4711/");
			day.post();
			DocumentRef posted = DocumentRef.of(DocumentKind.FINAL_RESULT, day.small.event().id(), 0);
			assertThat(PrintedText.scanned(pdf(posted, Locale.ENGLISH))).contains(":4711/");
		}
		finally {
			sources.remove("another");
		}
	}

	/** What is offered now of a version. */
	private Map<DocumentRef, byte[]> ofVersions(PaperDay day) {
		return this.documents.offered(day.small.event())
			.stream()
			.filter((ref) -> ref.version() > 0)
			.collect(Collectors.toMap((ref) -> ref, (ref) -> pdf(ref, Locale.ENGLISH)));
	}

	private void assertSame(Map<DocumentRef, byte[]> before) {
		before.forEach((ref, pdf) -> assertThat(pdf(ref, Locale.ENGLISH)).as(ref.kind().word()).isEqualTo(pdf));
	}

	@Test
	void whatIsPrintedBeforehandSaysWhatTheDesksSay() {
		PaperDay day = PaperDay.placement(this.context);
		String entries = text(day.ref(DocumentKind.ENTRY_LIST), Locale.ENGLISH);
		String order = text(day.ref(DocumentKind.STARTING_ORDER), Locale.ENGLISH);
		String panel = text(day.ref(DocumentKind.PANEL), Locale.ENGLISH);
		for (EntryView entry : this.context.getBean(Entries.class).ofEvent(day.small.event().id())) {
			assertThat(entries)
				.contains(words(entry.team().name() + entry.team().club().name() + entry.team().club().town()));
		}
		this.context.getBean(StartingOrderDraw.class)
			.ofSegment(day.small.segment(1))
			.orElseThrow()
			.starts()
			.forEach((start) -> assertThat(order).contains(start.number() + words(team(day, start.entry().value()))));
		assertThat(order).contains(words("Seed: seed 1."));
		Map<Integer, List<StartingOrderView.Start>> groups = this.context.getBean(StartingOrderDraw.class)
			.ofSegment(day.small.segment(1))
			.orElseThrow()
			.starts()
			.stream()
			.collect(Collectors.groupingBy(StartingOrderView.Start::group, TreeMap::new, Collectors.toList()));
		groups.forEach((group, starts) -> assertThat(order).contains(words("Warm-up group " + group)
				+ starts.get(0).number() + words(team(day, starts.get(0).entry().value()))));
		day.small.seats().forEach((seat) -> assertThat(panel).contains(words(seat.label() + seat.official().name())));
	}

	private static String team(PaperDay day, UUID entry) {
		return day.small.entries()
			.stream()
			.filter((one) -> one.id().value().equals(entry))
			.map((one) -> one.team().name())
			.findFirst()
			.orElseThrow();
	}

	@Test
	void decisionsAreToldWithWhoTookThemAndWhatTheyMoved() {
		PaperDay day = PaperDay.placement(this.context);
		day.rule();
		day.post();
		day.protest();
		assertThat(text(day.ref(DocumentKind.RULINGS), Locale.ENGLISH)).contains(words("May we carry lanterns?"),
				words("Allowed."), words("They stay in the hands."), words("Rule 7 Runa Hale"));
		assertThat(text(day.ref(DocumentKind.PROTEST_DECISIONS), Locale.ENGLISH)).contains(
				words("Computation: A sum is wrong."), words("Mira Sund"),
				words("Upheld. It was keyed in wrongly. Runa Hale"));
		DocumentRef notice = day.ref(DocumentKind.CORRECTION_NOTICE);
		String corrected = text(notice, Locale.ENGLISH);
		List<Standings.CorrectedVersion> corrections = this.standings.corrections(day.small.segment(1),
				notice.version());
		assertThat(corrections).hasSize(3).anySatisfy((one) -> assertThat(one.moved()).isNotEmpty());
		corrections.forEach((one) -> {
			assertThat(corrected).contains("Version" + one.version().number() + ",", words(one.version().note()));
			one.moved()
				.forEach((move) -> assertThat(corrected).contains(words(move.team()) + move.before() + move.after()));
		});
		assertThat(text(day.ref(DocumentKind.REFEREES_REPORT), Locale.ENGLISH)).contains(
				words("5 teams in the starting order, 3 corrections, 1 protest."),
				words("did not finish A blade broke"));
	}

	@Test
	void sameVersionIsTheSameBytesWhateverCameAfterIt() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		DocumentRef first = DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 1);
		byte[] before = pdf(first, Locale.ENGLISH);
		day.skateRest(1);
		assertThat(pdf(first, Locale.ENGLISH)).isEqualTo(before);
		assertThat(this.documents.print(first, PaperSize.LETTER, Locale.ENGLISH).bytes()).isNotEqualTo(before);
	}

	/**
	 * A sheet on the wall may be old, and nobody who scans it may take it for today's.
	 */
	@Test
	void whoeverComparesAnOldSheetHearsThatItWasReplaced() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		DocumentRef first = DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 1);
		assertThat(compared(first)).contains("The data are the same as when this sheet was made.");
		day.skateNext(1);
		assertThat(compared(first))
			.contains("Version 1 is kept here as this sheet shows it, but version 2 has replaced it")
			.doesNotContain("The data are the same");
		assertThat(compared(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 2)))
			.contains("The data are the same as when this sheet was made.");
		assertThat(compared(DocumentRef.of(DocumentKind.STARTING_ORDER, day.segment(1), 0)))
			.contains("The data are the same as when this sheet was made.");
	}

	/** What was handed out stays out when the signed result is opened again. */
	@Test
	void whoeverComparesACertificateHearsThatItsResultWasOpenedAgain() {
		PaperDay day = PaperDay.placement(this.context);
		day.sign();
		DocumentRef certificates = day.ref(DocumentKind.CERTIFICATES);
		DocumentRef medals = day.ref(DocumentKind.MEDALS);
		assertThat(compared(certificates)).contains("The data are the same as when this sheet was made.");
		day.reopen();
		assertThat(compared(certificates)).contains("is kept here as this sheet shows it, but version");
		assertThat(compared(medals)).contains("is kept here as this sheet shows it, but version");
	}

	/** Nobody finds out by trying what a sheet would be that was never printed. */
	@Test
	void thereIsNoSheetToCompareOfWhatCouldNeverBePrinted() {
		PaperDay day = PaperDay.placement(this.context);
		DocumentRef medals = day.ref(DocumentKind.MEDALS);
		DocumentRef certificates = new DocumentRef(DocumentKind.CERTIFICATES, medals.subject(), medals.version());
		assertThat(this.documents.fingerprint(certificates)).isEmpty();
		assertThat(new Visitor(this.port).open("/follow/paper/certificates/%s/%d/%s".formatted(medals.subject(),
				medals.version(), this.documents.fingerprint(medals).orElseThrow().substring(0, 32)))
			.text()).contains("There is no such document here.");
	}

	/** Whoever prints from a page that lay open prints what counts now. */
	@Test
	void anOpenListFollowsWhatCanBePrinted() {
		PaperDay day = PaperDay.placement(this.context);
		day.sign();
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String list = "/desk/documents/" + day.small.competition().id();
		String live = follow(referee.open(list).document());
		assertThat(referee.open(list).text()).contains("Certificates");
		assertThat(referee.open(live).status()).isEqualTo(204);
		day.reopen();
		Visitor.Page now = referee.open(live);
		assertThat(now.status()).isEqualTo(200);
		assertThat(now.text()).contains("Medals").doesNotContain("Certificates");
		assertThat(referee.open(follow(now.document())).status()).isEqualTo(204);
	}

	private static String follow(Document page) {
		return page.getElementById("offered").attr("hx-get");
	}

	private String compared(DocumentRef ref) {
		return new Visitor(this.port).open("/follow/paper/%s/%s/%d/%s".formatted(ref.kind().word(), ref.subject(),
				ref.version(), this.documents.fingerprint(ref).orElseThrow().substring(0, 32)))
			.text();
	}

	@Test
	void everySheetNamesALineOfTheRecordThatCanBeCompared() {
		PaperDay day = PaperDay.points(this.context);
		ResultVersion version = day.segment();
		Anchor line = this.record.ofVersion(version.scopeId(), version.number(), version.fingerprint()).orElseThrow();
		assertThat(text(day.ref(DocumentKind.SEGMENT_RESULT), Locale.ENGLISH))
			.contains("Record:line" + line.line() + line.digest().substring(0, 32));
		Anchor head = this.record.head().orElseThrow();
		assertThat(text(day.ref(DocumentKind.ENTRY_LIST), Locale.ENGLISH))
			.contains("Record:line" + head.line() + head.digest().substring(0, 32));
		assertThat(Anchor.parse(head.line() + " " + head.digest().substring(0, 32))).isPresent();
	}

	/** What is noted is one line for all that is printed of a segment. */
	@Test
	void whatIsKeptOnPaperIsNotedOnceForEachVersion() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		day.skateNext(1);
		String place = "Paper: " + day.event().name() + ", " + day.event().segments().get(0).name() + ", "
				+ day.competition().name();
		pdf(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 2), Locale.ENGLISH);
		ResultVersion version = this.standings.version(day.segment(1), 2).orElseThrow();
		long line = this.record.ofVersion(version.scopeId(), 2, version.fingerprint()).orElseThrow().line();
		assertThat(keptAt(place)).containsExactly(line);
		this.database.sql("update record_anchor set line = 1 where place = ?").param(place).update();
		pdf(DocumentRef.of(DocumentKind.JUDGES_DETAIL, day.segment(1), 2), Locale.ENGLISH);
		assertThat(keptAt(place)).as("written once").containsExactly(1L);
		day.skateNext(1);
		pdf(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 0), Locale.ENGLISH);
		assertThat(keptAt(place)).as("the newest asked for without its number").singleElement().isNotEqualTo(1L);
		assertThat(Crew.visitor(this.context, Role.REFEREE).open("/desk/record/anchors").text()).contains(place);
		List<Long> newest = keptAt(place);
		new PaperAnchors(this.record).note(noted(day, 1), this.record.ofLine(line).orElseThrow());
		assertThat(keptAt(place)).as("after a start, of an older version").isEqualTo(newest);
	}

	private DocumentContent noted(SmallCompetition day, int version) {
		return this.context.getBean(DocumentReading.class)
			.read(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), version));
	}

	private List<Long> keptAt(String place) {
		return this.database.sql("select line from record_anchor where place = ?")
			.param(place)
			.query(Long.class)
			.list();
	}

	/** A database that takes no more, or not from here. */
	@Test
	void aSheetIsPrintedWhereNothingCanBeNoted() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateNext(1);
		this.database.sql("alter table record_anchor rename to record_anchor_gone").update();
		try {
			assertThat(text(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 1), Locale.ENGLISH))
				.contains("Version1of");
		}
		finally {
			this.database.sql("alter table record_anchor_gone rename to record_anchor").update();
		}
	}

	@Test
	void signaturesStayOnTheVersionThatWasSigned() {
		PaperDay day = PaperDay.points(this.context);
		day.sign();
		DocumentRef signed = day.ref(DocumentKind.SEGMENT_RESULT);
		byte[] before = pdf(signed, Locale.ENGLISH);
		assertThat(PrintedText.of(before)).contains("Official", "Referee:signedbyRunaHale,",
				"Accountant:signedbyBoTally,");
		day.reopen();
		assertThat(pdf(signed, Locale.ENGLISH)).isEqualTo(before);
		assertThat(text(day.ref(DocumentKind.SEGMENT_RESULT), Locale.ENGLISH)).contains("Provisional")
			.doesNotContain("signedby");
	}

	@Test
	void namesOfThePanelStayWithTheVersion() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateNext(1);
		day.seatInstead(SeatKind.ACCOUNTANT, "Vera Newcome");
		day.skateNext(1);
		assertThat(text(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 1), Locale.ENGLISH))
			.contains("BoTally")
			.doesNotContain("VeraNewcome");
		assertThat(text(DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 2), Locale.ENGLISH))
			.contains("VeraNewcome")
			.doesNotContain("BoTally");
	}

	/** A version as it was stored before the names of the panel were kept. */
	@Test
	void versionsFromBeforeNamesAndVenuesWereKeptArePrintedWithoutThem() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateNext(1);
		this.database
			.sql("insert into earlier_venue select id, 'Oldtown', first_day, last_day, zone from competition "
					+ "where id = ?")
			.param(day.competition().id().value())
			.update();
		DocumentRef ref = publishedEarlier(day, this.standings.latest(day.segment(1)).orElseThrow().standing());
		assertThat(text(ref, Locale.ENGLISH)).contains("Version99", "Oldtown")
			.doesNotContain(words(day.seats().get(0).official().name()));
		assertThat(text(new DocumentRef(ref.kind(), ref.subject(), 1), Locale.ENGLISH)).doesNotContain("Oldtown");
	}

	/** The same standing as the 99th version, as such were written before. */
	private DocumentRef publishedEarlier(SmallCompetition day, Standing now) {
		StandingText text = new StandingText();
		String before = text.write(as(now));
		assertThat(text.write(text.read(before))).isEqualTo(before).doesNotContain("officials", "venue");
		this.database
			.sql("insert into result_version (id, scope, scope_id, number, state, cause, note, published_at, "
					+ "fingerprint, body) values (?, 'SEGMENT', ?, 99, 'PROVISIONAL', 'STATUS', '', ?, ?, ?)")
			.params(UUID.randomUUID(), day.segment(1).value(), OffsetDateTime.ofInstant(Instant.EPOCH, ZoneOffset.UTC),
					StandingText.fingerprint(before), before)
			.update();
		DocumentRef ref = DocumentRef.of(DocumentKind.SEGMENT_RESULT, day.segment(1), 99);
		assertThat(this.documents.fingerprint(ref)).contains(StandingText.fingerprint(before));
		return ref;
	}

	private static Standing as(Standing now) {
		return new Standing(now.competition(), now.event(), now.segment(), now.rulebook(), now.ruleSet(), now.method(),
				now.judges(), now.skated(), now.starters(), now.firstMark(), now.secondMark(), now.segments(),
				now.rows(), now.outlook(), now.panel(), null, null);
	}

	private String text(DocumentRef ref, Locale language) {
		return PrintedText.of(pdf(ref, language));
	}

	private byte[] pdf(DocumentRef ref, Locale language) {
		return this.documents.print(ref, PaperSize.A4, language).bytes();
	}

	private record SegmentTimes(Instant posted, Instant until) {
	}

}
