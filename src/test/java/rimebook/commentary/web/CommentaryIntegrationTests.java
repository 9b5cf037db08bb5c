package rimebook.commentary.web;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.rulings.QuestionReleases;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** The commentator's link from its issue to its end, and what its page keeps back. */
@WholeApplication
class CommentaryIntegrationTests {

	private static final Actor SECRETARY = CompetitionFixtures.SECRETARY;

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	private static final Pattern FIGURE = Pattern.compile("\\d+\\.\\d+");

	private static final Pattern TOKEN = Pattern.compile("#([A-Za-z0-9_-]{43})");

	@LocalServerPort
	private int port;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@Autowired
	private CommentaryLinks links;

	@Test
	void aLinkIsIssuedAtTheDeskOpensThePageAndIsShut() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String desk = "/desk/commentary/" + day.competition().id();
		Visitor.Page issued = referee.open(desk).submit("form.sheet", Map.of("person", "Aino Lumi"));
		String token = TOKEN.matcher(issued.text()).results().findFirst().orElseThrow().group(1);
		assertThat(issued.text()).contains("Aino Lumi", "opens the page", "not opened yet");

		Visitor commentator = new Visitor(this.port);
		Visitor.Page page = commentator.open("/commentary").submit("#open", Map.of("token", token));
		assertThat(page.status()).isEqualTo(200);
		assertThat(page.text()).contains("Junior", "The starting order is not drawn yet.", "Aino Lumi");
		assertThat(page.document().outerHtml()).doesNotContain(token);
		assertThat(page.path()).isEqualTo("/commentary");
		assertThat(referee.open(desk).text()).contains("first opened");

		referee.open(desk).submit("form[action$=/revocation]", Map.of());
		assertThat(commentator.bytes("/commentary?part=live").statusCode()).as("the open page").isEqualTo(410);
		Visitor.Page shut = commentator.open("/commentary");
		assertThat(shut.status()).isEqualTo(410);
		assertThat(shut.text()).contains("This link was shut.", "Ask the referee of the competition");
		assertThat(shut.text()).doesNotContain("Junior");

		Visitor.Page renewed = referee.open(desk).submit("form[action$=/renewal]", Map.of());
		String fresh = TOKEN.matcher(renewed.text()).results().findFirst().orElseThrow().group(1);
		assertThat(open(token).status()).isEqualTo(404);
		assertThat(open("http://rink/commentary#" + fresh).text()).contains("Junior");
	}

	@Test
	void theTokenStandsNowhereButInTheLink() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		String token = link(day, false);
		assertThat(this.database.sql("select token_digest from commentary_link where competition_id = ?")
			.param(day.competition().id().value())
			.query(String.class)
			.list()).singleElement().asString().hasSize(64).isNotEqualTo(token);
		List<String> lines = this.database
			.sql("select action || ' ' || before_text || after_text || reason from record_line where subject_id = ?")
			.param(day.competition().id().toString())
			.query(String.class)
			.list();
		assertThat(lines).anyMatch((line) -> line.startsWith("competition.commentator-let-in Aino Lumi, until "))
			.noneMatch((line) -> line.contains(token));
		Visitor commentator = new Visitor(this.port);
		commentator.open("/commentary").submit("#open", Map.of("token", token));
		HttpResponse<byte[]> part = commentator.bytes("/commentary?part=live");
		assertThat(part.headers().firstValue("Referrer-Policy")).hasValue("no-referrer");
		assertThat(part.headers().firstValue("Cache-Control")).hasValue("no-store");
		assertThat(new String(part.body(), StandardCharsets.UTF_8)).startsWith("<div id=\"live\"")
			.doesNotContain(token);
	}

	@Test
	void aWrongOrExpiredLinkSaysWhomToAskInThreeLanguages() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		String token = link(day, false);
		this.database.sql("update commentary_link set expires_at = ? where competition_id = ?")
			.param(OffsetDateTime.ofInstant(Instant.now().minusSeconds(1), ZoneOffset.UTC))
			.param(day.competition().id().value())
			.update();
		assertThat(open(token).status()).isEqualTo(410);
		assertThat(open(token).text()).contains("This link has expired", "for a new link");
		Visitor.Page wrong = new Visitor(this.port).open("/commentary?lang=fi")
			.submit("#open", Map.of("token", "x".repeat(43)));
		assertThat(wrong.status()).isEqualTo(404);
		assertThat(wrong.text()).contains("Tämä linkki ei avaa mitään.", "ylituomarilta");
		assertThat(wrong.document().select("html").attr("lang")).isEqualTo("fi");
		assertThat(new Visitor(this.port).open("/commentary?lang=fr").submit("#open", Map.of("token", "")).text())
			.contains("Ce lien n’ouvre rien.", "juge-arbitre");
	}

	@Test
	void nothingUnpublishedIsOnThePageInPlacementJudging() {
		SmallCompetition day = SmallCompetition.running(this.context, 4, 3);
		day.open(1);
		day.skateNext(1);
		day.skateNext(1);
		PerformanceView onIce = day.callNext(1);
		day.send(onIce, day.seats().get(0), 1, new CardMarks(130, 140));
		Secrets secrets = keep(day, onIce);
		String page = live(day, false);
		assertThat(page).contains("Team", "Just in", "highest ", "16", "Winter Harbour", "Town ");
		assertThat(figures(page)).isSubsetOf(derivable(day, 1));
		assertThat(figures(page)).doesNotContain("1.3", "1.4").isNotEmpty();
		secrets.areKept(page);
		assertThat(secrets.onPublicPages()).doesNotContain("Winter Harbour");
	}

	@Test
	void nothingUnpublishedIsOnThePageInPointsJudging() {
		SmallCompetition day = PointsCompetition.running(this.context, 4, 3);
		day.open(1);
		day.skateNext(1);
		day.skateNext(1);
		PerformanceView onIce = day.callNext(1);
		EntryView team = team(onIce, day);
		new CalledElements(this.context, onIce).call("TwE2", "PB3");
		Secrets secrets = keep(day, onIce);
		String page = live(day, false);
		assertThat(page).contains(team.team().name()).doesNotContain("twizzle", "TwE", "PB3", "Called so far");
		assertThat(figures(page)).isSubsetOf(derivable(day, 1)).isNotEmpty();
		secrets.areKept(page);
		assertThat(live(day, true)).contains("Called so far", "twizzle element", "pivoting block")
			.doesNotContain("TwE2", "PB3", "level 2", "level 3");
	}

	@Test
	void whatTheRefereeReleasesIsThereAndGoesAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView onIce = day.callNext(1);
		QuestionView asked = ask(onIce, "May the captain throw her cap?");
		assertThat(live(day, false)).doesNotContain("throw her cap");
		QuestionReleases releases = this.context.getBean(QuestionReleases.class);
		releases.release(asked.id(), true, REFEREE);
		assertThat(live(day, false)).contains("throw her cap", "waits for the referee");
		releases.release(asked.id(), false, REFEREE);
		assertThat(live(day, false)).doesNotContain("throw her cap");
		rule(asked, 0, true, "");
		assertThat(live(day, false)).contains("throw her cap", "It is part of it.", "not allowed");
		rule(asked, 1, false, "told too early");
		assertThat(live(day, false)).doesNotContain("throw her cap", "told too early");
	}

	@Test
	void theSecretaryWritesDownWhatIsTold() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String entry = "/desk/entries/entry/" + day.entries().get(0).id();
		String form = entry + "/announcer/" + day.segment(1);
		assertThat(secretary.open(form).submit("form.sheet", Map.of("skaters", "many")).text())
			.contains("please type a number from 1 to 32");
		assertThat(secretary.open(form).submit("form.sheet", Map.of("skaters", "14", "music", "Salt Road")).text())
			.contains("14 skaters on the ice", "Music: Salt Road");
		assertThat(this.database.sql(
				"select before_text || '>' || after_text from record_line where subject_id = ? and action = 'entry.announcer-facts'")
			.param(day.entries().get(0).id().toString())
			.query(String.class)
			.list()).containsExactly(
					"Short programme: nothing for the announcer>Short programme: 14 on the ice; music: Salt Road");
	}

	@Test
	void theAnnouncersSheetReadsTheSameAloud() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		PerformanceView onIce = day.callNext(1);
		tell(onIce);
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		String sheet = announcer.open("/desk/sheet/" + segment).text();
		assertThat(sheet).contains("To be read aloud", "On the ice now, number 2: " + team(onIce, day).team().name(),
				"There are sixteen skaters on the ice.", "The marks of ", "For the required elements: ",
				"Next on the ice: ");
		Element finnish = announcer.open("/desk/sheet/" + segment + "?lang=fi")
			.document()
			.selectFirst(".say-introduction p");
		assertThat(finnish.text()).startsWith("Nyt jäällä numero 2: ");
		assertThat(finnish.attr("lang")).isEqualTo("fi");
	}

	private String link(SmallCompetition day, boolean calls) {
		return this.links.issue(new CommentaryLinks.IssueLink(day.competition().id().value(), "Aino Lumi", calls,
				Instant.now().plusSeconds(3600)), REFEREE);
	}

	private Visitor.Page open(String token) {
		return new Visitor(this.port).open("/commentary").submit("#open", Map.of("token", token));
	}

	/** All that the page says, its hidden parts and its attributes among it. */
	private String live(SmallCompetition day, boolean calls) {
		Visitor commentator = new Visitor(this.port);
		commentator.open("/commentary").submit("#open", Map.of("token", link(day, calls)));
		Visitor.Page page = commentator.open("/commentary/" + day.segment(1));
		assertThat(page.status()).isEqualTo(200);
		return page.document().outerHtml();
	}

	/**
	 * Every figure that public pages and data say, and what follows from two of them: how
	 * far they lie apart.
	 */
	private Set<String> derivable(SmallCompetition day, int position) {
		String slug = day.competition().slug();
		String event = day.event().slug();
		String segment = day.event().segments().get(position - 1).slug();
		Visitor anybody = new Visitor(this.port);
		Set<String> said = new TreeSet<>();
		for (String path : List.of("/follow/" + slug, "/follow/" + slug + "/" + event,
				"/follow/" + slug + "/" + event + "/" + segment,
				"/api/public/competitions/" + slug + "/events/" + event + "/segments/" + segment,
				"/api/public/competitions/" + slug + "/events/" + event)) {
			said.addAll(figures(new String(anybody.bytes(path).body(), StandardCharsets.UTF_8)));
		}
		assertThat(said).isNotEmpty();
		said.addAll(apart(said));
		return said;
	}

	private static Set<String> apart(Collection<String> figures) {
		List<BigDecimal> numbers = figures.stream().map(BigDecimal::new).toList();
		return numbers.stream()
			.flatMap((one) -> numbers.stream().map(one::subtract))
			.filter((apart) -> apart.signum() >= 0)
			.map(BigDecimal::toPlainString)
			.collect(Collectors.toSet());
	}

	private static Set<String> figures(String text) {
		return FIGURE.matcher(text.replaceAll("<(script|link)[^>]*>", ""))
			.results()
			.map(MatchResult::group)
			.collect(Collectors.toCollection(TreeSet::new));
	}

	private static EntryView team(PerformanceView performance, SmallCompetition day) {
		return day.entries().stream().filter((one) -> one.id().equals(performance.entry())).findFirst().orElseThrow();
	}

	private void tell(PerformanceView performance) {
		this.context.getBean(ForTheAnnouncer.class)
			.write(new ForTheAnnouncer.WriteDown(performance.entry(), performance.segment(), 16, "Winter Harbour", -1),
					SECRETARY);
	}

	private QuestionView ask(PerformanceView performance, String text) {
		return this.context.getBean(Rulings.class)
			.ask(new Rulings.AskQuestion(performance.entry(), null, QuestionView.RulingTopic.PROP, text,
					"Mira Manager"), SECRETARY);
	}

	private void rule(QuestionView question, int seen, boolean shown, String reason) {
		this.context.getBean(Rulings.class)
			.rule(new Rulings.GiveRuling(question.id(), seen,
					new RulingView.Answer(RulingView.Verdict.NOT_ALLOWED, "", "It is part of it.", "", shown), reason),
					REFEREE);
	}

	/** Put everywhere what nobody may tell. */
	private Secrets keep(SmallCompetition day, PerformanceView onIce) {
		tell(onIce);
		QuestionView hidden = ask(onIce, "Is the hidden lift a lift?");
		rule(hidden, 0, false, "");
		ask(onIce, "Is the open cord a rope?");
		EntryView leaves = day.entries()
			.stream()
			.filter((one) -> day.performances(1)
				.stream()
				.anyMatch((performance) -> performance.entry().equals(one.id())
						&& performance.status() == PerformanceStatus.WAITING))
			.findFirst()
			.orElseThrow();
		this.context.getBean(Entries.class).withdraw(leaves.id(), leaves.version(), "measles in the team", REFEREE);
		return new Secrets(day);
	}

	private final class Secrets {

		private final SmallCompetition day;

		Secrets(SmallCompetition day) {
			this.day = day;
		}

		void areKept(String page) {
			assertThat(page).doesNotContain("hidden lift", "It is part of it.", "open cord", "measles", "Mira Manager",
					SmallCompetition.REFEREE.name());
		}

		String onPublicPages() {
			String slug = this.day.competition().slug();
			Visitor anybody = new Visitor(CommentaryIntegrationTests.this.port);
			return anybody.open("/follow/" + slug).text()
					+ anybody.open("/follow/" + slug + "/" + this.day.event().slug()).text();
		}

	}

}
