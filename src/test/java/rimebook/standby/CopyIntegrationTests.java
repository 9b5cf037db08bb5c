package rimebook.standby;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.RimebookApplication;
import rimebook.audit.Anchor;
import rimebook.audit.AnchorFile;
import rimebook.audit.RecordAnchors;
import rimebook.pages.Alarm;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.KeptFolder;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

/** Copies of an H2 file, as a laptop in a rink has it. */
class CopyIntegrationTests {

	private static Path place;

	private static ConfigurableApplicationContext service;

	private final Wall wall = new Wall();

	private Path stick;

	private CopyMaker maker;

	@BeforeAll
	static void start() throws IOException {
		place = Files.createTempDirectory("rimebook-copies");
		service = new SpringApplicationBuilder(RimebookApplication.class).properties("server.port=0")
			.run("--spring.datasource.url=jdbc:h2:file:" + place.resolve("data/rimebook")
					+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE");
	}

	@AfterAll
	static void stop() throws IOException {
		service.close();
		try (Stream<Path> all = Files.walk(place)) {
			all.sorted(Comparator.reverseOrder()).forEach((file) -> file.toFile().delete());
		}
	}

	@BeforeEach
	void plugIn() throws IOException {
		this.stick = Files.createTempDirectory(place, "stick");
		this.maker = maker();
	}

	@Test
	void aCopyHoldsTheRecordAndItsNoteSaysSo() throws IOException {
		act("before");
		CopyState.Kept kept = this.maker.look();
		CopyNote note = folder().notes().get(0);
		assertThat(note).isEqualTo(kept.copy());
		assertThat(note.head()).isEqualTo(tail().head());
		assertThat(note.at()).isEqualTo(this.wall.instant());
		assertThat(note.sha256()).isEqualTo(WholeFile.sha256(folder().copy(note.name())));
		assertThat(note.life()).isEqualTo(service.getBean(ServiceLives.class).current().id().toString());
		assertThat(access().headOf(folder().copy(note.name()))).isEqualTo(note.head());
		assertThat(folder().files(WholeFile.PART)).isEmpty();
		assertThat(SignOfLife.read(folder().alive()))
			.contains(new SignOfLife(this.wall.instant(), note.head(), note.life()));
	}

	@Test
	void thePlaceKeepsAnchorsAndIsNotedOnceAMinute() throws IOException {
		act("one");
		RecordHead first = this.maker.look().head();
		assertThat(noted()).isEqualTo(first.line());
		assertThat(anchors(folder().alive())).containsExactlyElementsOf(anchors(folder().note(newest())))
			.extracting(Anchor::line, Anchor::digest)
			.containsExactly(tuple(first.line(), first.digest()));
		act("two");
		this.wall.later(Duration.ofSeconds(59));
		RecordHead second = this.maker.look().head();
		assertThat(anchors(folder().alive())).extracting(Anchor::line).containsExactly(second.line());
		assertThat(noted()).as("a minute is not over").isEqualTo(first.line());
		this.wall.later(Duration.ofSeconds(16));
		this.maker.look();
		assertThat(noted()).isEqualTo(second.line());
	}

	private String newest() throws IOException {
		return folder().notes().get(0).name();
	}

	private static List<Anchor> anchors(Path note) throws IOException {
		AnchorFile read = AnchorFile.read(Files.readString(note));
		assertThat(read.unreadable()).isEmpty();
		return read.anchors();
	}

	private long noted() {
		return service.getBean(JdbcTemplate.class)
			.queryForObject("select line from record_anchor where place = ?", Long.class,
					"Second place, " + folder().path());
	}

	@Test
	void whereNothingIsNewOnlyASignOfLifeIsGiven() throws IOException {
		this.maker.look();
		this.wall.later(Duration.ofMinutes(2));
		CopyState.Kept kept = this.maker.look();
		assertThat(folder().notes()).hasSize(1);
		assertThat(kept.until()).isEqualTo(this.wall.instant());
		assertThat(SignOfLife.read(folder().alive()).orElseThrow().at()).isEqualTo(this.wall.instant());
		this.wall.later(Duration.ofMinutes(9));
		this.maker.look();
		assertThat(folder().notes()).as("what never comes to the record is copied at times").hasSize(2);
	}

	@Test
	void newLinesLieBesideTheCopyUntilTheNextIsDue() throws IOException {
		CopyNote first = this.maker.look().copy();
		act("one");
		this.wall.later(Duration.ofSeconds(3));
		CopyState.Kept kept = this.maker.look();
		act("two");
		this.wall.later(Duration.ofSeconds(3));
		this.maker.look();
		assertThat(kept.head().line()).isEqualTo(first.head().line() + 1);
		assertThat(Files.readString(folder().since(first.name())).lines().filter((line) -> !line.isBlank()))
			.satisfiesExactly((line) -> assertThat(line).contains("\"after\":\"one\""),
					(line) -> assertThat(line).contains("\"after\":\"two\""));
		this.wall.later(Duration.ofSeconds(30));
		CopyNote next = this.maker.look().copy();
		assertThat(next.head()).isEqualTo(tail().head());
		assertThat(folder().notes()).extracting(CopyNote::name).containsExactly(next.name(), first.name());
	}

	@Test
	void aStickThatWasPulledOutIsTold() throws IOException {
		this.maker.look();
		Path away = this.stick.resolveSibling("away");
		Files.move(this.stick, away);
		assertThatThrownBy(this.maker::look).isInstanceOf(IOException.class)
			.satisfies((ex) -> assertThat(CopyFailure.of((Exception) ex, folder()).english()).contains("is not there"));
		Files.createDirectory(this.stick);
		assertThatThrownBy(this.maker::look).as("an empty folder where the stick was")
			.isInstanceOf(IOException.class)
			.satisfies((ex) -> assertThat(CopyFailure.of((Exception) ex, folder()).english()).contains("is not there"));
		this.maker.look();
		assertThat(folder().notes()).as("another stick gets a copy of its own").hasSize(1);
	}

	@Test
	void whatNeverBecameWholeIsNoCopyAndGoes() throws IOException {
		CopyNote whole = this.maker.look().copy();
		String torn = CopyFolder.nameOf(this.wall.instant().minusSeconds(5));
		Files.writeString(folder().copy(torn), "half of it");
		Files.writeString(folder().path().resolve(torn + CopyFolder.COPY + WholeFile.PART), "half of it");
		Files.writeString(this.stick.resolve("holiday.zip"), "somebody else's");
		assertThat(folder().notes()).containsExactly(whole);
		assertThatThrownBy(() -> access().headOf(folder().copy(torn))).isInstanceOf(IOException.class);
		act("more");
		this.wall.later(Duration.ofSeconds(40));
		this.maker.look();
		assertThat(folder().files(CopyFolder.COPY)).hasSize(2).doesNotContain(folder().copy(torn));
		assertThat(folder().files(WholeFile.PART)).isEmpty();
		assertThat(this.stick.resolve("holiday.zip")).exists();
	}

	@Test
	void aCopyThatBreaksOffIsNoneAndTheOneBeforeStays() throws IOException {
		CopyNote whole = this.maker.look().copy();
		act("more");
		this.wall.later(Duration.ofSeconds(40));
		CopyMaker full = maker(new JdbcTemplate() {
			@Override
			public <T> @Nullable T execute(ConnectionCallback<T> backup) {
				try {
					Files.writeString(folder().path()
						.resolve(CopyFolder.nameOf(CopyIntegrationTests.this.wall.instant()) + CopyFolder.COPY
								+ WholeFile.PART),
							"half of it");
				}
				catch (IOException ex) {
					throw new UncheckedIOException(ex);
				}
				throw new UncheckedIOException(new IOException("No space left on device"));
			}
		});
		assertThatThrownBy(full::look)
			.satisfies((ex) -> assertThat(CopyFailure.of((Exception) ex, folder()).english()).contains("is full"));
		try (Stream<Path> files = Files.list(this.stick)) {
			assertThat(files.map((file) -> file.getFileName().toString())).as("nothing that looks like a copy")
				.containsExactlyInAnyOrder(whole.name() + CopyFolder.COPY, whole.name() + CopyFolder.NOTE,
						"rimebook-alive.txt");
		}
		assertThat(WholeCopies.in(folder(), access()).newest()).contains(whole);
	}

	/**
	 * The lines still had room, the sign has none: that is not well because nothing is
	 * new.
	 */
	@Test
	void aPlaceThatFailedIsWellOnlyOnceSomethingWasWrittenThere() throws IOException {
		this.maker.look();
		act("more");
		Path inTheWay = Files.createDirectories(Path.of(folder().alive() + WholeFile.PART)).resolve("full");
		Files.createFile(inTheWay);
		for (int look = 1; look <= 3; look++) {
			this.wall.later(Duration.ofSeconds(3));
			assertThatThrownBy(this.maker::look).isInstanceOf(IOException.class);
		}
		Files.delete(inTheWay);
		Files.delete(inTheWay.getParent());
		CopyState.Kept kept = this.maker.look();
		assertThat(kept.head()).isEqualTo(tail().head());
		assertThat(SignOfLife.read(folder().alive()).orElseThrow().head()).isEqualTo(kept.head());
	}

	@Test
	void theSameDiskIsToldAndAPlaceThatHangsIsBehind() throws IOException {
		CopyState.Kept kept = this.maker.look();
		assertThat(kept.at().sameDisk()).isTrue();
		CopyState state = new CopyState(CopyState.Kind.KEPT, kept.until(), kept, Sentence.NONE);
		assertThat(state.isWell()).isFalse();
		assertThat(state.at(kept.until().plusSeconds(59)).kind()).isEqualTo(CopyState.Kind.KEPT);
		assertThat(state.at(kept.until().plusSeconds(61)).kind()).isEqualTo(CopyState.Kind.BEHIND);
	}

	@Test
	void twoLaptopsThatWriteToOnePlaceAreTold() throws IOException {
		assertThat(this.maker.look().at().shared()).isFalse();
		this.wall.later(Duration.ofSeconds(20));
		assertThat(this.maker.look().at().shared()).as("its own sign").isFalse();
		SignOfLife own = SignOfLife.read(folder().alive()).orElseThrow();
		new SignOfLife(own.at(), own.head(), "another").write(folder().alive(), "");
		this.wall.later(Duration.ofSeconds(3));
		CopyState.Kept kept = this.maker.look();
		assertThat(kept.at().shared()).isTrue();
		assertThat(
				new CopyState(CopyState.Kind.KEPT, kept.until(), kept, Sentence.NONE).doubt().orElseThrow().english())
			.contains("two laptops run at once");
		this.wall.later(Duration.ofSeconds(20));
		assertThat(this.maker.look().at().shared()).as("it may be seen between two signs only").isTrue();
		this.wall.later(Duration.ofSeconds(61));
		assertThat(this.maker.look().at().shared()).as("the other was stopped").isFalse();
	}

	@Test
	void musicFollowsTheDatabaseAPortionAtATimeAndNeverHoldsItUp() throws IOException {
		KeptFolder music = new KeptFolder("music", Files.createTempDirectory(place, "music"));
		for (String name : List.of("a", "b", "c")) {
			try (RandomAccessFile file = new RandomAccessFile(music.path().resolve(name).toFile(), "rw")) {
				file.setLength(name.equals("a") ? CopyMaker.PORTION : 5);
			}
		}
		CopyMaker both = maker(service.getBean(JdbcTemplate.class), List.of(music));
		Files.createFile(this.stick.resolve("music"));
		assertThatThrownBy(both::look).as("no room for music").isInstanceOf(IOException.class);
		assertThat(folder().notes()).as("but for the database").hasSize(1);
		assertThat(SignOfLife.read(folder().alive())).isPresent();
		Files.delete(this.stick.resolve("music"));
		assertThat(both.look().lacking()).isEqualTo(2);
		assertThat(both.look().lacking()).isZero();
		assertThat(this.stick.resolve("music")).isDirectoryContaining("glob:**/a").isDirectoryContaining("glob:**/c");
		assertThat(folder().notes()).as("and the copies are still told apart").hasSize(1);
	}

	@Test
	void whereNoPlaceWasSetUpItIsSaidAsLoudly() {
		CopyState state = service.getBean(Copying.class).state();
		assertThat(state.kind()).isEqualTo(CopyState.Kind.NEVER_SET_UP);
		assertThat(service.getBeansOfType(Alarm.Source.class).values())
			.flatExtracting((source) -> source.alarms().toList())
			.contains(new Alarm(state.why(), StandbyConfiguration.PAGE, true));
	}

	private void act(String word) {
		service.getBean(TransactionTemplate.class)
			.executeWithoutResult((status) -> service.getBean(Acts.class)
				.publish(AuditedChange.of(Actor.system(), "service", "this service", "service.tried").to(word)));
	}

	private CopyFolder folder() {
		return new CopyFolder(this.stick);
	}

	private CopyMaker maker() {
		return maker(service.getBean(JdbcTemplate.class));
	}

	private CopyMaker maker(JdbcTemplate jdbc) {
		return maker(jdbc, List.of());
	}

	private CopyMaker maker(JdbcTemplate jdbc, List<KeptFolder> beside) {
		return new CopyMaker(folder(), new CopyMaker.Source(jdbc, tail(), service.getBean(RecordAnchors.class),
				service.getBean(ServiceLives.class), DatabaseFile.of(service.getEnvironment()).orElseThrow(), beside),
				Duration.ofSeconds(30), this.wall);
	}

	private static RecordTail tail() {
		return service.getBean(RecordTail.class);
	}

	private static CopyCheck access() {
		return DatabaseFile.of(service.getEnvironment()).orElseThrow().access();
	}

	/** A clock that goes on only when it is told to. */
	private static final class Wall extends Clock {

		private Instant now = Instant.parse("2027-02-13T14:00:00Z");

		void later(Duration step) {
			this.now = this.now.plus(step);
		}

		@Override
		public Instant instant() {
			return this.now;
		}

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			return this;
		}

	}

}
