package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.RimebookApplication;
import rimebook.audit.RecordAnchors;
import rimebook.music.Music;
import rimebook.music.MusicRetention;
import rimebook.music.MusicView;
import rimebook.music.Tones;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.KeptFolder;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

/** A laptop dies, another one goes on from the stick. */
class StartFromCopyIntegrationTests {

	@TempDir
	private static Path firstPlace;

	/** Never stops by itself; who starts another does not wait for it to die. */
	private static ConfigurableApplicationContext first;

	@TempDir
	private Path place;

	private Path stick;

	private ConfigurableApplicationContext laptop;

	@BeforeAll
	static void startTheFirst() {
		first = laptop(firstPlace);
	}

	@AfterAll
	static void stopTheFirst() {
		first.close();
	}

	@BeforeEach
	void start() throws IOException {
		this.stick = Files.createDirectory(this.place.resolve("stick"));
		this.laptop = first;
	}

	@AfterEach
	void stop() {
		if (this.laptop != first) {
			this.laptop.close();
		}
	}

	@Test
	void theNextLaptopKnowsUntilWhenItKnowsAndWhatWasLost() throws IOException {
		act("kept");
		CopyMaker maker = maker();
		CopyNote copy = maker.look().copy();
		act("lost, but known");
		maker.look();
		act("lost and unknown");
		ServiceLife first = this.laptop.getBean(ServiceLives.class).current();

		this.laptop = second();
		ServiceLife life = this.laptop.getBean(ServiceLives.class).current();
		assertThat(life.number()).isEqualTo(2);
		assertThat(life.id()).isNotEqualTo(first.id());
		assertThat(life.from().copy()).isEqualTo(copy.name());
		assertThat(life.from().knownUntil()).isEqualTo(copy.at());
		assertThat(life.from().knownLine()).isEqualTo(copy.head().line());
		assertThat(life.from().lostLines()).isEqualTo(1);
		assertThat(query("select after_text from lost_line")).isEqualTo("lost, but known");
		assertThat(query("select after_text from record_line where number = " + copy.head().line())).isEqualTo("kept");
		assertThat(query("select reason from record_line where action = 'service.started-from-copy'"))
			.isEqualTo("copy " + copy.name());
		assertThat(this.place.resolve("second/rimebook.restoring.mv.db")).doesNotExist();
	}

	@Test
	void theSameCommandAgainLosesNothing() throws IOException {
		maker().look();
		this.laptop = second();
		act("done in the second life");
		this.laptop.close();
		this.laptop = second("--from-copy-in-place-of=rimebook.mv.db");
		assertThat(this.laptop.getBean(ServiceLives.class).known()).hasSize(2);
		assertThat(query("select max(after_text) from record_line where action = 'service.tried' and number = "
				+ "(select max(number) from record_line where action = 'service.tried')"))
			.isEqualTo("done in the second life");
	}

	@Test
	void aBrokenCopyIsPassedOverAndOneWithoutANoteToo() throws IOException {
		CopyNote whole = maker().look().copy();
		act("more");
		CopyNote broken = maker().look().copy();
		byte[] bytes = Files.readAllBytes(folder().copy(broken.name()));
		bytes[bytes.length / 2] ^= 1;
		Files.write(folder().copy(broken.name()), bytes);
		Files.copy(folder().copy(whole.name()),
				folder().copy(CopyFolder.nameOf(Clock.systemUTC().instant().plusSeconds(5))));
		WholeCopies found = WholeCopies.in(folder(), file(this.laptop).access());
		assertThat(found.newest()).contains(whole);
		assertThat(found.broken()).satisfiesExactly((one) -> assertThat(one).contains("never became whole"),
				(one) -> assertThat(one).contains(broken.name(), "SHA-256"));
	}

	/** What was handed in after the copy is lost with it; what was deleted stays so. */
	@Test
	void theNextLaptopHasTheMusicThatItsDatabaseKnows() throws IOException {
		SmallCompetition day = SmallCompetition.running(this.laptop, 1, 3);
		byte[] sound = Tones.wav(1000, 440);
		MusicView.Version kept = handIn(day, sound);
		CopyMaker maker = maker();
		maker.look();
		String lost = handIn(day, Tones.wav(1000, 441)).file().sha256();
		assertThat(maker.look().lacking()).isZero();
		assertThat(this.stick.resolve("music")).isDirectoryContaining("glob:**/" + lost);

		this.laptop = second();
		awaitFiles();
		assertThat(versions(day)).extracting(MusicView.Version::id).containsExactly(kept.id());
		assertThat(this.laptop.getBean(Music.class).content(kept.id()).bytes().getContentAsByteArray())
			.isEqualTo(sound);
		this.laptop.getBean(MusicRetention.class).delete(day.competition().id(), SmallCompetition.SECRETARY);
		this.laptop.close();

		this.laptop = second();
		awaitFiles();
		assertThat(versions(day)).extracting(MusicView.Version::here).containsExactly(false);
		assertThat(file(this.laptop).music().path().resolve(lost)).as("nobody knows it").doesNotExist();
	}

	private MusicView.Version handIn(SmallCompetition day, byte[] sound) {
		return this.laptop.getBean(Music.class)
			.handIn(new Music.HandIn(day.entries().get(0).id(), day.segment(1), new ByteArrayResource(sound),
					sound.length, "a.wav", ""), SmallCompetition.SECRETARY);
	}

	private List<MusicView.Version> versions(SmallCompetition day) {
		return this.laptop.getBean(Music.class).of(day.entries().get(0).id()).get(0).versions();
	}

	private void awaitFiles() {
		FilesBack back = this.laptop.getBean(FilesBack.class);
		await("files").until(() -> back.coming() == 0);
	}

	/** The clock of the second laptop is an hour behind that of the first. */
	@Test
	void aThirdLaptopGoesOnFromTheSecondWhateverTheClocksSay() throws IOException {
		CopyMaker first = maker();
		first.look();
		act("lost with the first");
		first.look();
		this.laptop = second();
		ServiceLife second = this.laptop.getBean(ServiceLives.class).current();
		act("done at the second");
		CopyNote newest = maker(Clock.offset(Clock.systemUTC(), Duration.ofHours(-1))).look().copy();
		assertThat(newest.name()).isLessThan(folder().notes().get(0).name());
		WholeCopies found = WholeCopies.in(folder(), file(this.laptop).access());
		assertThat(found.newest()).contains(newest);
		assertThat(newest.life()).isEqualTo(second.id().toString());
		assertThat(Since.read(folder(), newest).lines()).as("what was lost with the first is not lost again").isEmpty();
	}

	@Test
	void aDatabaseThatIsThereIsNeverReplacedInSilence() throws IOException, SQLException {
		maker().look();
		DatabaseFile there = new DatabaseFile(this.place.resolve("second/rimebook.mv.db"), file(first).access());
		DriverManager
			.getConnection("jdbc:h2:file:" + this.place.resolve("second/rimebook"), there.access().user(),
					there.access().password())
			.close();
		Path music = Files.createDirectory(this.place.resolve("second/rimebook.music"));
		Files.createFile(music.resolve("of the one that was there"));
		StartFromCopy silent = new StartFromCopy(folder(), there, false, Clock.systemUTC());
		assertThatThrownBy(silent::run).isInstanceOf(CopyRefusedException.class)
			.hasMessageContaining("There is a database already")
			.satisfies((refused) -> assertThat(((CopyRefusedException) refused).action())
				.contains("--from-copy-in-place-of=rimebook.mv.db"));
		StartedFromCopy started = new StartFromCopy(folder(), there, true, Clock.systemUTC()).run();
		assertThat(started.sentences())
			.anySatisfy((line) -> assertThat(line).contains("Started from the copy rimebook-"));
		try (Stream<Path> files = Files.list(there.folder())) {
			assertThat(files.map((file) -> file.getFileName().toString()))
				.anyMatch((name) -> name.matches("rimebook.before-rimebook-2.*\\.mv\\.db"))
				.anyMatch((name) -> name.matches("rimebook.before-rimebook-2.*\\.music"))
				.doesNotContain("rimebook.music");
		}
	}

	@Test
	void aDatabaseInUseIsNotTouched() throws IOException {
		maker().look();
		StartFromCopy bold = new StartFromCopy(folder(), file(this.laptop), true, Clock.systemUTC());
		assertThatThrownBy(bold::run).isInstanceOf(CopyRefusedException.class);
		act("goes on");
		assertThat(file(this.laptop).path()).exists();
	}

	@Test
	void anEmptyFolderIsRefusedInWordsAndOneThatIsNotThereToo() throws IOException {
		StartFromCopy start = new StartFromCopy(folder(),
				new DatabaseFile(this.place.resolve("third/rimebook.mv.db"), file(this.laptop).access()), false,
				Clock.systemUTC());
		assertThatThrownBy(start::run).isInstanceOf(CopyRefusedException.class)
			.hasMessageContaining("There is no whole copy in " + this.stick);
		Files.delete(this.stick);
		assertThatThrownBy(start::run).isInstanceOf(CopyRefusedException.class)
			.hasMessageContaining("There is no folder " + this.stick);
		assertThat(this.place.resolve("third")).doesNotExist();
	}

	private ConfigurableApplicationContext second(String... more) {
		return laptop(this.place.resolve("second"),
				Stream.concat(Stream.of("--from-copy=" + this.stick), Stream.of(more)).toArray(String[]::new));
	}

	private static ConfigurableApplicationContext laptop(Path folder, String... more) {
		String url = "--spring.datasource.url=jdbc:h2:file:" + folder.resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE";
		return new SpringApplicationBuilder(RimebookApplication.class).properties("server.port=0")
			.run(Stream.concat(Stream.of(url), Stream.of(more)).toArray(String[]::new));
	}

	private void act(String word) {
		this.laptop.getBean(TransactionTemplate.class)
			.executeWithoutResult((status) -> this.laptop.getBean(Acts.class)
				.publish(AuditedChange.of(Actor.system(), "service", "this service", "service.tried").to(word)));
	}

	private String query(String query) {
		return this.laptop.getBean(JdbcClient.class).sql(query).query(String.class).single();
	}

	private CopyFolder folder() {
		return new CopyFolder(this.stick);
	}

	private CopyMaker maker() {
		return maker(this.laptop.getBean(Clock.class));
	}

	private CopyMaker maker(Clock clock) {
		return new CopyMaker(folder(),
				new CopyMaker.Source(this.laptop.getBean(JdbcTemplate.class), this.laptop.getBean(RecordTail.class),
						this.laptop.getBean(RecordAnchors.class), this.laptop.getBean(ServiceLives.class),
						file(this.laptop), beside()),
				Duration.ofSeconds(30), clock);
	}

	private List<KeptFolder> beside() {
		return this.laptop.getBeansOfType(KeptFolder.Source.class)
			.values()
			.stream()
			.flatMap((source) -> source.folder().stream())
			.toList();
	}

	private static DatabaseFile file(ConfigurableApplicationContext laptop) {
		return DatabaseFile.of(laptop.getEnvironment()).orElseThrow();
	}

}
