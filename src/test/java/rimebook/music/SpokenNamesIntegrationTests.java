package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** How teams say their names, for whoever announces and comments. */
@WholeApplication
class SpokenNamesIntegrationTests {

	@LocalServerPort
	private int port;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private SpokenNames names;

	@Autowired
	private RecordVerification record;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private TeamView.Id team;

	private StoredFindings stored;

	@BeforeEach
	void enterATeamOfItsOwn() {
		this.stored = StoredFindings.since(this.record);
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		this.team = enter(this.day, "Lanterns " + UUID.randomUUID());
	}

	private static TeamView.Id enter(SmallCompetition day, String team, ApplicationContext context) {
		return context.getBean(Entries.class)
			.enter(new EnterTeam(day.event().id(), "Beacon Club", "Skerrywick", team, "", ""),
					SmallCompetition.SECRETARY)
			.team()
			.id();
	}

	private TeamView.Id enter(SmallCompetition day, String team) {
		return enter(day, team, this.context);
	}

	@Test
	void aRecordingIsMeasuredReplacedAndRemoved() {
		byte[] file = Tones.wav(3_240, 440);
		SpokenName first = hand("", file);
		assertThat(first.kind()).isEqualTo(MusicKind.WAV);
		assertThat(first.seconds()).isEqualTo("3.2");
		assertThat(this.names.content(this.team).bytes()).isEqualTo(file);
		refused("stale-version", () -> hand("", Tones.wav(2_000, 450)));
		SpokenName second = hand(first.sha256(), Tones.wav(900, 450));
		assertThat(this.names.of(List.of(this.team))).containsEntry(this.team, second);
		refused("stale-version", () -> this.names.remove(this.team, first.sha256(), SmallCompetition.SECRETARY));
		this.names.remove(this.team, second.sha256(), SmallCompetition.SECRETARY);
		assertThat(this.names.of(this.team)).isEmpty();
		assertThat(this.database.sql("select count(*) from spoken_name where team_id = ?")
			.param(this.team.value())
			.query(Integer.class)
			.single()).isZero();
		assertThat(this.database.sql("select action from record_line where subject_id = ? order by number")
			.param(this.team.toString())
			.query(String.class)
			.list())
			.containsExactly("team.added", "team.name-recorded", "team.name-recorded", "team.recording-removed");
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whatIsNoShortRecordingIsRefusedAndNothingIsKept() throws IOException {
		refused("music-missing", () -> hand("", new byte[0]));
		refused("spoken-too-long", () -> hand("", Tones.wav(20_001, 440)));
		hand("", Tones.wav(20_000, 440));
		String seen = this.names.of(this.team).orElseThrow().sha256();
		refused("spoken-too-large", () -> hand(seen, Tones.wav(140_000, 440)));
		refused("music-unknown", () -> hand(seen, ("MZ" + "\0".repeat(500)).getBytes()));
		byte[] mp3 = resource("/music/tone-cbr.mp3");
		refused("music-broken", () -> hand(seen, Arrays.copyOf(mp3, 40)));
		refused("music-broken", () -> hand(seen, Tones.wav(100, 440)));
		assertThat(this.names.of(this.team).orElseThrow().sha256()).isEqualTo(seen);
	}

	private static byte[] resource(String name) throws IOException {
		try (InputStream in = SpokenNamesIntegrationTests.class.getResourceAsStream(name)) {
			return Objects.requireNonNull(in, name).readAllBytes();
		}
	}

	@Test
	void itIsHandedInAtTheDeskAndHeardByAnnouncerAndCommentatorAlone() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String page = "/desk/music/name/" + this.team;
		Visitor.Page wrong = secretary.open(page).upload("form.sheet", Map.of(), "name.mp3", new byte[] { 1, 2, 3 });
		assertThat(wrong.status()).isEqualTo(422);
		Visitor.Page kept = secretary.open(page).upload("form.sheet", Map.of(), "C:\\evil.wav", Tones.wav(1_500, 440));
		assertThat(kept.status()).isEqualTo(200);
		assertThat(kept.text()).contains("1.5 seconds, WAV");
		assertThat(kept.document().select("audio").attr("src")).isEqualTo(page + "/sound");

		this.day.move(CompetitionState.ENTRIES_CLOSED);
		this.day.move(CompetitionState.RUNNING);
		this.day.draw(1);
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		String sound = announcer.open("/desk/sheet/" + this.day.segment(1)).document().select("audio").attr("src");
		assertThat(sound).startsWith(page + "/sound");
		assertThat(announcer.bytes(sound).statusCode()).isEqualTo(200);
		assertThat(announcer.bytes(sound).headers().firstValue("Content-Type")).hasValue("audio/wav");
		assertThat(announcer.open(page).document().select("main form")).isEmpty();
		Visitor technical = Crew.visitor(this.context, Role.TECHNICAL);
		assertThat(technical.open("/desk/sheet/" + this.day.segment(1)).document().select("audio")).isEmpty();
		assertThat(technical.bytes(sound).statusCode()).isEqualTo(403);

		Visitor commentator = commentator(this.day);
		Visitor.Page told = commentator.open("/commentary/" + this.day.segment(1));
		assertThat(told.document().select("audio").eachAttr("src"))
			.anyMatch((src) -> src.startsWith("/commentary/said/" + this.team));
		assertThat(commentator.bytes("/commentary/said/" + this.team).statusCode()).isEqualTo(200);
		SmallCompetition other = SmallCompetition.running(this.context, 1, 3);
		assertThat(commentator(other).bytes("/commentary/said/" + this.team).statusCode()).isEqualTo(404);
		assertThat(new Visitor(this.port).bytes("/commentary/said/" + this.team).statusCode()).isEqualTo(404);
		Visitor.Page gone = secretary.open(page).press("form[action$=/removal]");
		assertThat(gone.text()).contains("There is no recording");
		assertThat(announcer.bytes(sound).statusCode()).isEqualTo(404);
		// A page that was opened before still asks for it: no reason to shut out who
		// talks.
		IntStream.range(0, 30)
			.forEach((time) -> assertThat(commentator.bytes("/commentary/said/" + this.team).statusCode())
				.isEqualTo(404));
		assertThat(commentator.open("/commentary").status()).isEqualTo(200);
	}

	@Test
	void itGoesOnTheDayUnlessTheTeamIsInACompetitionThatIsNotOver() {
		String name = "Lamps " + UUID.randomUUID();
		TeamView.Id both = enter(this.day, name);
		SmallCompetition further = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		assertThat(enter(further, name)).isEqualTo(both);
		hand("", Tones.wav(1_000, 440));
		this.names.record(recording(both, "", Tones.wav(1_000, 441)), SmallCompetition.SECRETARY);
		this.names.delete(this.day.competition().id(), Actor.system());
		assertThat(this.names.of(this.team)).isEmpty();
		assertThat(this.names.of(both)).isPresent();
	}

	private Visitor commentator(SmallCompetition small) {
		String token = this.context.getBean(CommentaryLinks.class)
			.issue(new CommentaryLinks.IssueLink(small.competition().id().value(), "Aino Lumi", false,
					Instant.now().plusSeconds(3600)), SmallCompetition.REFEREE);
		Visitor visitor = new Visitor(this.port);
		visitor.open("/commentary").submit("#open", Map.of("token", token));
		return visitor;
	}

	private SpokenName hand(String seen, byte[] file) {
		return this.names.record(recording(this.team, seen, file), SmallCompetition.SECRETARY);
	}

	private static SpokenNames.Recording recording(TeamView.Id team, String seen, byte[] file) {
		return new SpokenNames.Recording(team, seen, new ByteArrayResource(file), file.length);
	}

	private static void refused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
