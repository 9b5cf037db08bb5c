package rimebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.music.Music;
import rimebook.music.Tones;
import rimebook.rosters.RosterImport;
import rimebook.rosters.Rosters;
import rimebook.testsupport.Crew;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/**
 * The power goes while a file of rosters is written and two teams hand in music, and
 * comes back. What was answered is there, whole; of what was not, nothing or all; and
 * whoever sends theirs again puts nobody there twice.
 */
class KilledBeforeTheIceTests {

	private static final int PEOPLE = 1200;

	private static final Duration PATIENCE = Duration.ofMinutes(1);

	private static final IntConsumer NOBODY = (done) -> {
	};

	@TempDir
	private Path folder;

	private ServiceProcess service;

	private CompetitionId competition;

	private SegmentId segment;

	private List<EntryId> entries = List.of();

	private String secretary;

	/** The pitch of each file whose handing in was answered. */
	private final Map<Integer, Queue<Integer>> answered = Map.of(0, new ConcurrentLinkedQueue<>(), 1,
			new ConcurrentLinkedQueue<>());

	@BeforeEach
	void enterTwoTeams() throws IOException {
		this.service = new ServiceProcess(database(), Path.of("target", getClass().getSimpleName() + ".log"),
				"-XX:TieredStopAtLevel=1");
		try (ConfigurableApplicationContext context = this.service.within()) {
			SmallCompetition small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, context, 2,
					CompetitionFixtures.anEvent("Junior", 3));
			this.competition = small.competition().id();
			this.segment = small.segment(1);
			this.entries = small.entries().stream().map(EntryView::id).toList();
			this.secretary = Crew.add(context, Role.SECRETARY);
		}
	}

	@AfterEach
	void end() {
		this.service.close();
	}

	/** Where the service keeps everything. */
	List<String> database() throws IOException {
		return List.of("spring.datasource.url=jdbc:h2:file:" + this.folder.resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE");
	}

	@Test
	void whatWasAnsweredIsThereAndNothingIsHalf() throws Exception {
		this.service.start();
		Visitor visitor = Visitor.signedIn(this.service.port(), this.secretary, Crew.PASSWORD);
		List<CompletableFuture<Void>> teams = IntStream.range(0, 2)
			.mapToObj((team) -> CompletableFuture.runAsync(() -> handInUntilTheEnd(team)))
			.toList();
		await().atMost(PATIENCE)
			.failFast(() -> teams.stream()
				.filter(CompletableFuture::isCompletedExceptionally)
				.forEach(CompletableFuture::join))
			.until(() -> this.answered.values().stream().noneMatch(Queue::isEmpty));
		String writing = beginToWrite(visitor);
		await().atMost(PATIENCE)
			.pollInterval(Duration.ofMillis(20))
			.until(() -> visitor.open(writing).text().matches(".* [1-9]00 of 1,200 rows .*"));
		this.service.kill();
		teams.forEach(CompletableFuture::join);

		this.service.start();
		musicIsWhole(Visitor.signedIn(this.service.port(), this.secretary, Crew.PASSWORD));
		this.service.kill();
		try (ConfigurableApplicationContext context = this.service.within()) {
			nothingIsHalf(context);
			rostersGoOn(context);
			assertThat(context.getBean(RecordVerification.class).verify().isWhole()).isTrue();
		}
	}

	private String beginToWrite(Visitor visitor) {
		return visitor.open("/desk/rosters/files/" + this.competition)
			.upload("form[enctype]", Map.of(), "rosters.csv", csv().getBytes(StandardCharsets.UTF_8))
			.press("form[action$=/acceptance]")
			.path();
	}

	/** Each file is another one, so that none is known already. */
	private void handInUntilTheEnd(int team) {
		try {
			Visitor visitor = Visitor.signedIn(this.service.port(), this.secretary, Crew.PASSWORD);
			for (int pitch = 300 + 1000 * team;; pitch++) {
				Visitor.Page page = visitor.open(musicOf(team) + "/" + this.segment)
					.upload("form[enctype]", Map.of(), "music.wav", Tones.wav(165_000, pitch));
				assertThat(page.path()).as(page::text).isEqualTo(musicOf(team));
				this.answered.get(team).add(pitch);
			}
		}
		catch (UncheckedIOException ex) {
			// The service is gone.
		}
	}

	private void musicIsWhole(Visitor visitor) throws IOException {
		for (int team = 0; team < 2; team++) {
			List<byte[]> there = new ArrayList<>();
			for (String file : visitor.open(musicOf(team)).document().select("audio").eachAttr("src")) {
				there.add(visitor.bytes(file).body());
			}
			List<byte[]> sent = this.answered.get(team).stream().map((pitch) -> Tones.wav(165_000, pitch)).toList();
			assertThat(there).as("what was answered").containsAll(sent);
			assertThat(there.size() - sent.size()).as("stored, and not answered any more").isBetween(0, 1);
			Visitor.Page again = visitor.open(musicOf(team) + "/" + this.segment)
				.upload("form[enctype]", Map.of(), "music.wav", Tones.wav(165_000, 5000 + team));
			assertThat(again.path()).isEqualTo(musicOf(team));
		}
	}

	/** Neither in the folder nor in the database, whichever it is. */
	private void nothingIsHalf(ConfigurableApplicationContext context) throws IOException {
		Set<String> known = this.entries.stream()
			.flatMap((entry) -> context.getBean(Music.class).of(entry).stream())
			.flatMap((view) -> view.versions().stream())
			.peek((version) -> assertThat(version.here()).isTrue())
			.map((version) -> version.file().sha256())
			.collect(Collectors.toSet());
		assertThat(context.getBean(JdbcClient.class)
			.sql("select distinct sha256 from music_chunk")
			.query(String.class)
			.list()).isSubsetOf(known);
		try (Stream<Path> files = Files.walk(this.folder)) {
			assertThat(files.map((file) -> file.getFileName().toString())
				.filter((name) -> name.endsWith(".part") || name.matches("[0-9a-f]{64}"))).isSubsetOf(known);
		}
	}

	private void rostersGoOn(ConfigurableApplicationContext context) {
		long before = onRosters(context);
		assertThat(before).as("written before the power went").isPositive();
		RosterImport.Outcome rest = context.getBean(RosterImport.class)
			.apply(this.competition, csv(), new RosterImport.Answers(Set.of(), Set.of()), NOBODY,
					SmallCompetition.SECRETARY);
		assertThat(before + rest.people()).isEqualTo(PEOPLE);
		assertThat(onRosters(context)).isEqualTo(PEOPLE);
		System.out.println(before + " of " + PEOPLE + " people were written when the power went, " + rest.people()
				+ " after it; files of music answered: " + this.answered);
	}

	private long onRosters(ConfigurableApplicationContext context) {
		return context.getBean(Rosters.class)
			.of(this.entries)
			.values()
			.stream()
			.mapToLong((roster) -> roster.present().size())
			.sum();
	}

	private String musicOf(int team) {
		return "/desk/music/entry/" + this.entries.get(team);
	}

	private static String csv() {
		return "event,team,given_name,family_name,birth_date\n" + IntStream.range(0, PEOPLE)
			.mapToObj((i) -> "Junior,Team %d,%s,Firnley,2011-03-09%n".formatted(1 + i % 2, given(i)))
			.collect(Collectors.joining());
	}

	private static String given(int number) {
		return "S" + Integer.toString(number + 1000, 26)
			.chars()
			.mapToObj((digit) -> String.valueOf((char) ('a' + Character.digit(digit, 26))))
			.collect(Collectors.joining());
	}

}
