package rimebook.live;

import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.entries.EntryView;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** What officials do that everybody may know, and how much of it. */
@WholeApplication
class ReleasedIntegrationTests {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Rulings rulings;

	@Autowired
	private Protests protests;

	@Autowired
	private Timetables timetables;

	@Autowired
	private TimetableVersions versions;

	@Autowired
	private MomentReader moments;

	private SmallCompetition day;

	private Visitor visitor = new Visitor(0);

	private String slug = "";

	@BeforeEach
	void aCompetitionRuns() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.slug = this.day.competition().slug();
		this.visitor = new Visitor(
				this.context.getEnvironment().getRequiredProperty("local.server.port", Integer.class));
	}

	@Test
	void onlyTheRulingThatIsReleasedIsOnTheTeamsPage() {
		EntryView team = this.day.entries().get(0);
		Moment before = this.moments.read(this.slug, null);
		rule(team, "May a flag be carried?", true);
		rule(team, "May the gloves have stones?", false);
		assertThat(this.moments.read(this.slug, before).plan()).isGreaterThan(before.plan());
		String page = read("/follow/" + this.slug + "/team/" + team.id());
		assertThat(page).contains("Rulings of the referee", "May a flag be carried?", "Allowed")
			.doesNotContain("May the gloves have stones?", "Runa Hale");
	}

	private void rule(EntryView team, String text, boolean shown) {
		QuestionView question = this.rulings.ask(
				new Rulings.AskQuestion(team.id(), null, QuestionView.RulingTopic.PROP, text, "The coach"),
				SmallCompetition.REFEREE);
		this.rulings.rule(
				new Rulings.GiveRuling(question.id(), 0,
						new RulingView.Answer(RulingView.Verdict.ALLOWED, "", "It touches nobody.", "", shown), ""),
				SmallCompetition.REFEREE);
	}

	@Test
	void ofAProtestEverybodyReadsThatItWaits() {
		this.day.open(1);
		this.day.skateNext(1);
		String address = "/follow/" + this.slug + "/" + this.day.event().slug() + "/"
				+ this.day.event().segments().get(0).slug();
		assertThat(read(address)).doesNotContain("waiting for a decision");
		Moment before = this.moments.read(this.slug, null);
		this.protests.file(
				new Protests.FileProtest(this.day.segment(1),
						new ProtestView.Claim(this.day.entries().get(0).id(), ProtestView.ProtestCategory.CONDUCT,
								"The music stopped twice.", 0),
						"Somebody of the club", null),
				SmallCompetition.REFEREE);
		assertThat(this.moments.read(this.slug, before).plan()).isGreaterThan(before.plan());
		await().untilAsserted(() -> assertThat(read(address)).contains("A protest is waiting for a decision.")
			.doesNotContain("The music stopped"));
	}

	@Test
	void timetableIsDataOnceItIsPublished() {
		String address = "/api/public/competitions/" + this.slug + "/timetable";
		assertThat(this.visitor.bytes(address).statusCode()).isEqualTo(404);
		this.timetables.fill(this.day.competition().id(), 0, SmallCompetition.REFEREE);
		assertThat(this.visitor.bytes(address).statusCode()).isEqualTo(404);
		this.versions.publish(this.day.competition().id(), 1, "", SmallCompetition.REFEREE);
		assertThat(read(address)).contains("\"version\":1", "\"kind\":\"SEGMENT\"", "\"teams\":[{\"entry\":");
		assertThat(read(address + ".csv").lines().toList()).hasSizeGreaterThan(6)
			.allMatch((line) -> line.startsWith("day,") || line.startsWith("20"));
		JsonNode description = JSON.readTree(read("/api/openapi"));
		JsonNode operation = description
			.at("/paths/~1api~1public~1competitions~1{competition}~1timetable/get/responses/200/content/application~1json");
		JsonNode answer = JSON.readTree(read(address));
		DescribedBody described = new DescribedBody(description);
		assertThat(described.faults(operation.get("schema"), answer, "timetable")).isEmpty();
		assertThat(described.faults(operation.get("schema"), operation.get("example"), "example")).isEmpty();
		assertThat(description
			.at("/paths/~1api~1public~1competitions~1{competition}~1timetable.csv/get/responses/200/content/text~1csv/example")
			.asString()
			.lines()
			.findFirst()).isEqualTo(read(address + ".csv").lines().findFirst());
		assertThat(read("/follow/" + this.slug + "/board/timetable")).contains("class=\"screen whole\"")
			.doesNotContain("No timetable is published yet.");
	}

	private String read(String address) {
		return new String(this.visitor.bytes(address).body(), StandardCharsets.UTF_8);
	}

}
