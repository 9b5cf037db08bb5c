package rimebook.review;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.SeatView;
import rimebook.performances.AbsentJudges;
import rimebook.performances.PanelChanges;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;

/** What the referee reads of a panel whose every mark is known. */
@WholeApplication
class PanelReviewIntegrationTests {

	/** What three judges give four teams for both marks, in tenths. */
	private static final int[][] MARKS = { { 50, 51, 50 }, { 48, 49, 39 }, { 46, 47, 48 }, { 44, 45, 47 } };

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PanelReviews reviews;

	private SmallCompetition day;

	@Test
	void judgesAreLaidBesideTheOthers() {
		place(MARKS);
		AspectReview order = aspect(Aspect.PLACE);
		// The others have A 1, B 2 and 4 = 3, C 3 and 2 = 2.5, D 4 and 3 = 3.5.
		assertThat(order.judges().get(0).pairs()).isEqualTo(new Pairs(5, 1, 0, 0, 0));
		assertThat(order.judges().get(0).kendall()).isEqualTo(67);
		// Both others have A, B, C, D; the third has A, C, D, B.
		assertThat(order.judges().get(2).pairs()).isEqualTo(new Pairs(4, 2, 0, 0, 0));
		assertThat(order.judges().get(2).kendall()).isEqualTo(33);
		assertThat(order.judges().get(2).spearman()).isEqualTo(40);
		assertThat(order.outlying()).singleElement()
			.extracting((mark) -> mark.spoken().english())
			.asString()
			.endsWith("on place 4, the others on 2, on average 2.");
		AspectReview first = aspect(Aspect.FIRST_MARK);
		assertThat(first.name()).hasToString("Required elements");
		assertThat(first.judges().get(2).distance()).isEqualTo(new JudgeLine.MarkDistance(4, 35, -15));
		assertThat(first.judges()).extracting(JudgeLine::outlying).containsExactly(0, 0, 1);
		assertThat(first.outlying()).extracting((mark) -> mark.spoken().english())
			.anyMatch((said) -> said.endsWith("3.9: less than all others, who gave 4.8 to 4.9, on average 4.85."));
	}

	@Test
	void thePageSaysIt() {
		place(MARKS);
		Visitor.Page page = page();
		assertThat(page.text()).contains("For the referee alone", "Not every result here is signed",
				"After 4 teams, version 4 of the result, provisional.",
				"5 of 6 pairs in the same order, 1 the other way round",
				"4 teams make 6 pairs: a single pair the other way round moves Kendall’s figure by about 0.33.",
				"less than all others, who gave 4.8 to 4.9", "This is no proof of an error",
				"The judge’s own marks are never in it");
		Element row = page.document().select("#segment-1-place ~ table tbody tr").get(2);
		assertThat(row.select("td").eachText()).containsExactly("0.33", "0.40",
				"4 of 6 pairs in the same order, 2 the other way round, 0 level", "1.00", "0.00", "1");
		assertThat(row.select("th").text()).startsWith("JUDGE 3").endsWith("Judge 3");
		assertThat(page.document().select("[id]").eachAttr("id")).doesNotHaveDuplicates();
	}

	/** What stands in no proof stands by each figure. */
	@Test
	void eachFigureSaysWhatItIsNoProofOf() {
		place(MARKS);
		assertThat(page().document().select("#legend dd")).hasSize(6)
			.allSatisfy((figure) -> assertThat(figure.select("span")).hasSize(2)
				.allSatisfy((sentence) -> assertThat(sentence.text()).hasSizeGreaterThan(40)));
	}

	@Test
	void onlyTheRefereeIsLetIn() {
		place(MARKS);
		for (Role role : Role.values()) {
			if (role != Role.JUDGE) {
				Visitor visitor = Crew.visitor(this.context, role);
				boolean may = Set.of(Role.REFEREE, Role.ADMINISTRATOR).contains(role);
				assertThat(visitor.open(path()).status()).as(role.word()).isEqualTo(may ? 200 : 403);
				assertThat(visitor.bytes(path() + "/marks.csv").statusCode()).isEqualTo(may ? 200 : 403);
				assertThat(visitor.open("/desk").text().contains("Panel review")).isEqualTo(may);
			}
		}
		assertThat(Crew.visitor(this.context, Role.ACCOUNTANT)
			.open("/desk/results/" + this.day.segment(1))
			.document()
			.select("a[href^=/desk/review]")).isEmpty();
	}

	@Test
	void nothingIsShownBeforeAnythingIsPublished() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		assertThat(page().text()).contains("Nothing has been published yet.");
		this.day.open(1);
		this.day.sendAll(this.day.callNext(1));
		assertThat(page().text()).contains("Nothing has been published yet.");
		assertThat(csv("/judges.csv")).isEmpty();
	}

	@Test
	void oneTeamHasNoOrder() {
		place(new int[][] { { 50, 51, 39 } });
		assertThat(aspect(Aspect.PLACE).judges()).extracting(JudgeLine::lack).containsOnly(Lack.ONE_TEAM);
		assertThat(aspect(Aspect.FIRST_MARK).judges().get(2).distance().away()).isEqualTo(115);
		assertThat(page().text()).contains("One team has no order that could be agreed about.").doesNotContain("NaN");
	}

	@Test
	void whereEverybodyIsLevelThereIsNoFigure() {
		place(new int[][] { { 50, 50, 50 }, { 50, 50, 50 }, { 50, 50, 50 } });
		assertThat(segment().aspects()).allSatisfy((aspect) -> assertThat(aspect.judges()).allSatisfy((judge) -> {
			assertThat(judge.lack()).isEqualTo(Lack.JUDGE_LEVEL);
			assertThat(judge.kendall()).isNull();
			assertThat(judge.distance().away()).isZero();
		}));
		assertThat(page().text()).contains("This judge has all teams level").doesNotContain("NaN");
		assertThat(csv("/judges.csv")).allSatisfy((row) -> assertThat(row.get("kendall_tau_b")).isEmpty())
			.allSatisfy((row) -> assertThat(row.get("why_no_figure")).contains("all teams level"));
	}

	@Test
	void whoWithdrewIsNotThere() {
		begin(SmallCompetition.running(this.context, 3, 3));
		skate(50, 51, 52);
		PerformanceView gone = this.day.performances(1).get(1);
		this.context.getBean(SegmentRun.class)
			.end(gone.id(), gone.version(), PerformanceStatus.WITHDRAWN, "An injury", REFEREE);
		skate(40, 41, 42);
		assertThat(segment().skated()).isEqualTo(2);
		assertThat(aspect(Aspect.PLACE).judges()).extracting((judge) -> judge.pairs().all()).containsOnly(1);
	}

	@Test
	void theSubstitutesMarksStandUnderTheSubstitutesName() {
		begin(SmallCompetition.running(this.context, 2, 3));
		SeatView substitute = this.day.seatSubstitute();
		for (int mark : List.of(30, 20)) {
			PerformanceView performance = this.day.callNext(1);
			this.day.send(performance, substitute, 1, new CardMarks(10 * mark, 300));
			judge(performance, 50 - mark, 50 - mark, 50 - mark);
		}
		assertThat(aspect(Aspect.PLACE).judges()).extracting(JudgeLine::kendall).containsExactly(100, 100, 100);
		this.context.getBean(PanelChanges.class)
			.takeOver(this.day.segment(1), this.day.seats().get(1).id(), "A broken tablet", REFEREE);
		AspectReview order = aspect(Aspect.PLACE);
		assertThat(order.judges().get(1).kendall()).isEqualTo(-100);
		assertThat(order.judges().get(1).who()).asString().startsWith("SUBSTITUTE 1 ");
		assertThat(order.judges().get(1).seats()).hasToString("[Judge 2 (the substitute)]");
	}

	@Test
	void twoJudgesHaveOnlyEachOther() {
		begin(SmallCompetition.running(this.context, 2, 3));
		skate(50, 30, 30);
		PerformanceView second = this.day.callNext(1);
		this.day.seats().stream().limit(2).forEach((seat) -> this.day.send(second, seat, 1, new CardMarks(400, 400)));
		this.context.getBean(AbsentJudges.class)
			.close(new AbsentJudges.CloseWithout(second.id(), this.day.now(second).version(),
					Set.of(this.day.seats().get(2).id()), "12.3", "Taken ill"), REFEREE);
		AspectReview first = aspect(Aspect.FIRST_MARK);
		assertThat(first.judges()).extracting(JudgeLine::kendall).containsExactly(-100, -100);
		assertThat(first.outlying()).isEmpty();
		assertThat(page().text()).contains("Two judges have only each other to be compared with");
	}

	@Test
	void gradesAndComponentsAreComparedInPointsJudging() {
		begin(PointsCompetition.running(this.context, 2, 3));
		skateByPoints(2, 1, -3);
		skateByPoints(3, 2, null);
		AspectReview grades = aspect(Aspect.GRADE);
		assertThat(grades.name()).hasToString("Grades of the elements");
		assertThat(grades.judges().get(0).distance()).isEqualTo(new JudgeLine.MarkDistance(4, 200, 200));
		assertThat(grades.judges().get(0).kendall()).isEqualTo(100);
		assertThat(grades.judges().get(2).lack()).isEqualTo(Lack.ONE_TEAM);
		assertThat(grades.judges().get(2).distance()).isEqualTo(new JudgeLine.MarkDistance(2, 450, -450));
		assertThat(grades.judges()).extracting(JudgeLine::outlying).containsExactly(0, 0, 2);
		assertThat(grades.outlying()).extracting(OutlyingMark::item).containsExactly("1 I4+pi3", "2 ME4");
		assertThat(aspect(Aspect.COMPONENT).judges()).extracting(JudgeLine::lack)
			.containsExactly(Lack.JUDGE_LEVEL, Lack.JUDGE_LEVEL, Lack.ONE_TEAM);
		assertThat(page().text()).contains("Components", "gave Team").doesNotContain("NaN");
	}

	/** Anybody can make the figures again from the marks. */
	@Test
	void theFilesHoldWhatTheFiguresAreMadeOf() {
		place(MARKS);
		List<CSVRecord> marks = csv("/marks.csv");
		assertThat(marks).hasSize(4 * 3 * 3);
		List<CSVRecord> judges = csv("/judges.csv");
		assertThat(judges).hasSize(3 * 3).allSatisfy((judge) -> {
			List<BigDecimal> away = marks.stream()
				.filter((mark) -> mark.get("what").equals(judge.get("what"))
						&& mark.get("judge").equals(judge.get("judge")))
				.map((mark) -> new BigDecimal(mark.get("difference")).abs())
				.toList();
			BigDecimal mean = away.stream()
				.reduce(BigDecimal.ZERO, BigDecimal::add)
				.divide(BigDecimal.valueOf(away.size()), 4, RoundingMode.HALF_UP);
			assertThat(new BigDecimal(judge.get("distance"))).isEqualByComparingTo(mean);
		});
		assertThat(marks).filteredOn((mark) -> mark.get("outlying").equals("yes")).isNotEmpty();
		assertThat(judges.get(2).get("kendall_tau_b")).isEqualTo("0.3333");
	}

	@Test
	void twoSegmentsAreTakenTogetherPersonByPerson() {
		place(MARKS);
		sign();
		this.day.open(2);
		this.day.skateRest(2);
		EventReview review = this.reviews.of(this.day.event().id());
		assertThat(review.segments()).hasSize(2);
		assertThat(review.segments().get(0).official()).isTrue();
		assertThat(review.together().get(0).judges()).hasSize(3).allSatisfy((judge) -> {
			assertThat(judge.pairs().all()).isEqualTo(12);
			assertThat(judge.seats()).hasSize(1);
		});
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String whole = "/desk/review/" + this.day.competition().id();
		assertThat(referee.open("/desk/review").document().select("a[href=" + whole + "]")).hasSize(1);
		Visitor.Page page = referee.open(whole);
		assertThat(page.text()).contains("Over the whole competition", "of 12 pairs in the same order");
		assertThat(page.document().select("a[href=" + path() + "]")).hasSize(1);
		assertThat(referee.open("/desk/results/" + this.day.segment(1)).document().select("a[href=" + path() + "]"))
			.hasSize(1);
	}

	private void place(int[][] marks) {
		begin(SmallCompetition.running(this.context, marks.length, marks[0].length));
		for (int[] team : marks) {
			skate(team);
		}
	}

	private void begin(SmallCompetition running) {
		this.day = running;
		this.day.open(1);
	}

	private void skate(int... tenths) {
		judge(this.day.callNext(1), tenths);
	}

	/** Let each seat give the same twice. */
	private void judge(PerformanceView performance, int... tenths) {
		List<SeatView> seats = this.day.seats();
		IntStream.range(0, tenths.length)
			.forEach((i) -> this.day.send(performance, seats.get(i), 1, new CardMarks(10 * tenths[i], 10 * tenths[i])));
		this.day.close(performance);
	}

	/**
	 * Two elements with each judge's one grade; {@code null} for a card that never came.
	 */
	private void skateByPoints(@Nullable Integer... grades) {
		PerformanceView performance = this.day.callNext(1);
		new CalledElements(this.context, performance).call("I4+pi3", "ME4");
		CalledListView list = this.context.getBean(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		List<SeatView> seats = this.day.seats();
		for (int i = 0; i < grades.length; i++) {
			Integer grade = grades[i];
			if (grade != null) {
				PointsJudge.send(this.context, performance, seats.get(i), list, grade);
			}
		}
		this.context.getBean(ListAuthorisations.class).authorise(performance.id(), list.sequence(), ACCOUNTANT);
		List<SeatView> absent = IntStream.range(0, grades.length)
			.filter((i) -> grades[i] == null)
			.mapToObj(seats::get)
			.toList();
		if (absent.isEmpty()) {
			this.day.close(performance);
		}
		else {
			this.context.getBean(AbsentJudges.class)
				.close(new AbsentJudges.CloseWithout(performance.id(), this.day.now(performance).version(),
						Set.of(absent.get(0).id()), "12.3", "Taken ill"), REFEREE);
		}
	}

	private void sign() {
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(this.day.segment(1), version(), ACCOUNTANT);
		publication.sign(this.day.segment(1), version(), Signatories.Signatory.REFEREE, REFEREE);
		publication.sign(this.day.segment(1), version(), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	private int version() {
		return this.context.getBean(Standings.class).result(this.day.segment(1)).orElseThrow().version();
	}

	private SegmentReview segment() {
		return this.reviews.of(this.day.event().id()).segments().get(0);
	}

	private AspectReview aspect(Aspect aspect) {
		return segment().aspects().stream().filter((one) -> one.aspect() == aspect).findFirst().orElseThrow();
	}

	private String path() {
		return "/desk/review/events/" + this.day.event().id();
	}

	private Visitor.Page page() {
		return Crew.visitor(this.context, Role.REFEREE).open(path());
	}

	private List<CSVRecord> csv(String file) {
		String text = new String(Crew.visitor(this.context, Role.REFEREE).bytes(path() + file).body(),
				StandardCharsets.UTF_8);
		try (CSVParser parser = CSVParser.parse(text,
				CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
			return parser.getRecords();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
