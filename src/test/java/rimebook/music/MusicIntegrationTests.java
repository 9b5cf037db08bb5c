package rimebook.music;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.InputStreamSource;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.rosters.Retention;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class MusicIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Music music;

	@Autowired
	private MusicDesk desk;

	@Autowired
	private MusicPlays plays;

	@Autowired
	private MusicDeadlines deadlines;

	@Autowired
	private MusicRetention retention;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private EntryId team;

	private SegmentId segment;

	@BeforeEach
	void aTeamIsEntered() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.team = this.day.entries().get(0).id();
		this.segment = this.day.segment(1);
	}

	@Test
	void whatIsHandedInIsMeasuredKeptByteByByteAndOnTheRecord() throws IOException {
		byte[] file = Tones.wav(61_500, 440);
		MusicView.Version version = handIn(file);
		assertThat(version.file().kind()).isEqualTo(MusicKind.WAV);
		assertThat(version.file().milliseconds()).isEqualTo(61_500);
		assertThat(version.length()).isEqualTo("1:01");
		assertThat(this.music.content(version.id()).bytes().getContentAsByteArray()).isEqualTo(file);
		assertThat(lines("music.handed-in")).singleElement()
			.asString()
			.contains("version 1, WAV, 1:01, " + file.length + " bytes, sha256 " + version.file().sha256());
	}

	/** What lies in pieces is read from anywhere without those before. */
	@Test
	void anyPartOfALargeFileCanBeRead() throws IOException {
		byte[] file = Tones.wav(90_000, 441);
		Music.Content content = this.music.content(handIn(file).id());
		for (int from : new int[] { 0, 1, ChunkStore.CHUNK - 1, ChunkStore.CHUNK, 2 * ChunkStore.CHUNK + 17,
				file.length - 1 }) {
			try (InputStream bytes = content.bytes().getInputStream()) {
				bytes.skipNBytes(from);
				assertThat(bytes.readNBytes(300_000)).as("from %d", from)
					.isEqualTo(Arrays.copyOfRange(file, from, Math.min(from + 300_000, file.length)));
			}
		}
	}

	@Test
	void theLaterOneCountsAndThoseBeforeStay() {
		handIn(Tones.wav(1000, 442));
		handIn(Tones.wav(2000, 442));
		handIn(Tones.wav(1000, 442));
		MusicView view = this.music.of(this.team).get(0);
		assertThat(view.versions()).extracting(MusicView.Version::number).containsExactly(3, 2, 1);
		assertThat(view.versions()).allMatch(MusicView.Version::here);
		assertThat(lines("music.handed-in")).hasSize(3).last().asString().startsWith("Short programme: version 2");
		assertThat(this.music.of(this.team).get(1).isMissing()).isTrue();
	}

	@Test
	void ofTwoAtOnceBothBecomeVersions() throws Exception {
		for (int round = 0; round < 5; round++) {
			byte[] one = Tones.wav(1300, 500 + round);
			byte[] other = (round == 0) ? one : Tones.wav(1300, 600 + round);
			Races.both(() -> handIn(one), () -> handIn(other));
			assertThat(this.music.of(this.team).get(0).versions()).hasSize(2 * (round + 1))
				.allMatch(MusicView.Version::here)
				.first()
				.extracting(MusicView.Version::number)
				.isEqualTo(2 * (round + 1));
		}
	}

	@Test
	void whatIsNoMusicIsRefusedWhateverItIsCalled() {
		assertRefused(new byte[0], "music-missing", "An empty one has no music");
		assertRefused("Not a sound.".repeat(500).getBytes(), "music-unknown", "whatever the file is called");
		assertRefused(program(), "music-unknown", "whatever the file is called");
		assertRefused(new byte[40_000], "music-unknown", "whatever the file is called");
		assertRefused(Arrays.copyOf(Tones.wav(5000, 443), 9000), "music-broken", "looks like WAV");
		assertRefused(onlyATag(), "music-broken", "looks like MP3");
		assertThat(this.music.of(this.team).get(0).versions()).isEmpty();
		assertThat(this.database.sql("select count(*) from music_chunk where sha256 like 'part%'")
			.query(Integer.class)
			.single()).isZero();
	}

	/** A program of another system begins like this. */
	private static byte[] program() {
		byte[] file = new byte[4096];
		file[0] = 'M';
		file[1] = 'Z';
		file[60] = 64;
		file[64] = 'P';
		file[65] = 'E';
		return file;
	}

	/** As an MP3 begins, and then nothing that sounds. */
	private static byte[] onlyATag() {
		byte[] file = new byte[20_000];
		System.arraycopy(new byte[] { 'I', 'D', '3', 3, 0, 0, 0, 0, 0, 100 }, 0, file, 0, 10);
		Arrays.fill(file, 110, file.length, (byte) 0x55);
		return file;
	}

	@Test
	void moreThanIsTakenIsRefusedBeforeItIsRead() {
		InputStreamSource unread = () -> {
			throw new AssertionError("was read");
		};
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.music.handIn(
					new Music.HandIn(this.team, this.segment, unread, 30 * 1024 * 1024 + 1, "a.wav", ""), SECRETARY))
			.satisfies((refused) -> assertThat(refused.sentence().english())
				.isEqualTo("The file has 30.1 MB; at most 30 MB are taken. Save it as MP3 or M4A, which is smaller."));
	}

	@Test
	void aFileIsNeverHeldAsAWhole() {
		byte[] file = Tones.wav(600_000, 444);
		AtomicInteger most = new AtomicInteger();
		InputStreamSource watched = () -> new ByteArrayInputStream(file) {
			@Override
			public synchronized int read(byte[] into, int offset, int length) {
				most.accumulateAndGet(length, Math::max);
				return super.read(into, offset, length);
			}

			@Override
			public synchronized byte[] readAllBytes() {
				throw new AssertionError("all at once");
			}

			@Override
			public synchronized long transferTo(OutputStream out) throws IOException {
				byte[] piece = new byte[8192];
				long count = 0;
				for (int read = read(piece, 0, piece.length); read > 0; read = read(piece, 0, piece.length)) {
					out.write(piece, 0, read);
					count += read;
				}
				return count;
			}
		};
		this.music.handIn(new Music.HandIn(this.team, this.segment, watched, file.length, "long.wav", ""), SECRETARY);
		assertThat(most.get()).isLessThanOrEqualTo(ChunkStore.CHUNK);
	}

	@Test
	void whatBreaksOffLeavesNothingBehind() {
		byte[] file = Tones.wav(60_000, 445);
		AtomicInteger opened = new AtomicInteger();
		InputStreamSource breaking = () -> (opened.incrementAndGet() < 3) ? new ByteArrayInputStream(file)
				: new ByteArrayInputStream(file, 0, file.length / 2);
		assertThatExceptionOfType(UncheckedIOException.class).isThrownBy(() -> this.music
			.handIn(new Music.HandIn(this.team, this.segment, breaking, file.length, "half.wav", ""), SECRETARY));
		assertThat(this.music.of(this.team).get(0).versions()).isEmpty();
		assertThat(this.database.sql("select count(*) from music_chunk where sha256 like 'part%'")
			.query(Integer.class)
			.single()).isZero();
	}

	@Test
	void afterTheDeadlineAReasonIsAskedFor() {
		CompetitionId competition = this.day.competition().id();
		this.deadlines.set(competition, 0, Instant.now().minusSeconds(120), SECRETARY);
		byte[] file = Tones.wav(1000, 446);
		assertRefused(file, "field-missing", "");
		MusicView.Version version = this.music.handIn(
				new Music.HandIn(this.team, this.segment, new ByteArrayResource(file), file.length, "x", "It skipped."),
				SECRETARY);
		assertThat(version.handedIn().lateReason()).isEqualTo("It skipped.");
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.deadlines.set(competition, 0, null, SECRETARY))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("stale-version"));
		this.deadlines.set(competition, 1, null, SECRETARY);
		assertThat(this.deadlines.isLate(competition)).isFalse();
	}

	@Test
	void onSiteIsTickedAndTakenBack() {
		assertThat(this.music.withMusic(this.segment)).as("nobody keeps music here").isEmpty();
		this.music.onSite(this.team, this.segment, true, REFEREE);
		this.music.onSite(this.team, this.segment, true, SECRETARY);
		assertThat(this.music.withMusic(this.segment))
			.hasValueSatisfying((have) -> assertThat(have).containsExactly(this.team));
		this.music.onSite(this.team, this.segment, false, SECRETARY);
		assertThat(this.music.of(this.team).get(0).onSite()).isNull();
		assertThat(lines("music.noted-on-site"))
			.containsExactly("Short programme: not on site>Short programme: on site");
		assertThat(lines("music.noted-not-on-site"))
			.containsExactly("Short programme: on site>Short programme: not on site");
	}

	@Test
	void theDeskHasTheOrderInForceWithGapsAndWhoLacksMusic() {
		handIn(Tones.wav(160_000, 447));
		this.day.draw(1);
		EntryId gone = this.day.entries().get(1).id();
		this.context.getBean(Entries.class).withdraw(gone, this.day.entries().get(1).version(), "Ill.", SECRETARY);
		MusicDesk.View view = this.desk.of(this.segment);
		assertThat(view.lines()).extracting(MusicDesk.Line::number).containsExactly(1, 2, 3);
		assertThat(view.files()).isEqualTo(1);
		assertThat(view.missing()).singleElement()
			.satisfies((line) -> assertThat(line.team().id()).isEqualTo(this.day.entries().get(2).id()));
		assertThat(view.lines()).filteredOn((line) -> !line.team().isEntered()).hasSize(1);
		assertThat(this.desk.of(this.day.segment(2)).lines()).as("not drawn: by name").hasSize(2);
	}

	@Test
	void whatWasPlayedIsNotedOnceHoweverOftenItIsTold() {
		MusicView.Version first = handIn(Tones.wav(1000, 448));
		MusicView.Version second = handIn(Tones.wav(1000, 449));
		Instant started = Instant.now().minus(Duration.ofMinutes(20));
		MusicPlays.NotePlay play = new MusicPlays.NotePlay(UUID.randomUUID(), second.id(), started);
		this.plays.note(play, REFEREE);
		this.plays.note(play, REFEREE);
		assertThat(this.plays.ofSegment(this.segment).get(this.team)).hasSize(1);
		assertThat(lines("music.played")).singleElement().asString().contains("version 2", "begun ");
		assertNotTaken(new MusicPlays.NotePlay(play.id(), first.id(), started), "play-differs");
		assertNotTaken(new MusicPlays.NotePlay(UUID.randomUUID(), first.id(), Instant.now().plusSeconds(3600)),
				"play-time");
		assertNotTaken(new MusicPlays.NotePlay(UUID.randomUUID(), new MusicView.VersionId(UUID.randomUUID()), started),
				"music-not-found");
	}

	private void assertNotTaken(MusicPlays.NotePlay play, String code) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.plays.note(play, REFEREE))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo(code));
	}

	@Test
	void whatIsDeletedIsGoneAndItsWordStays() {
		byte[] shared = Tones.wav(3000, 450);
		handIn(shared);
		byte[] own = Tones.wav(4000, 451);
		MusicView.Version gone = handIn(own);
		SmallCompetition other = SmallCompetition.running(this.context, 1, 3);
		this.music.handIn(new Music.HandIn(other.entries().get(0).id(), other.segment(1), new ByteArrayResource(shared),
				shared.length, "same.wav", ""), SECRETARY);
		CompetitionId competition = this.day.competition().id();
		assertThat(this.retention.there(competition)).isEqualTo(new MusicRetention.Deleted(1, own.length));
		assertThat(this.retention.delete(competition, SECRETARY)).isEqualTo(new MusicRetention.Deleted(1, own.length));
		assertThat(this.retention.delete(competition, SECRETARY).files()).isZero();
		MusicView view = this.music.of(this.team).get(0);
		assertThat(view.versions()).extracting(MusicView.Version::here).containsExactly(false, true);
		assertThat(view.isMissing()).isTrue();
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.music.content(gone.id()))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("music-not-found"));
		assertThat(this.database
			.sql("select after_text from record_line where subject_id = ? and action = 'music.deleted'")
			.param(competition.toString())
			.query(String.class)
			.list()).containsExactly("deleted");
	}

	@Test
	void onTheDayOnWhichPersonalDataGoMusicGoesToo() {
		MusicView.Version gone = handIn(Tones.wav(1037, 452));
		CompetitionId competition = this.day.competition().id();
		Retention personal = this.context.getBean(Retention.class);
		personal.set(competition, LocalDate.of(2030, 1, 1), Retention.View.NONE, SECRETARY);
		personal.delete(competition);
		assertThat(this.music.content(gone.id()).version().here()).as("its day has not come").isTrue();
		this.database.sql("update roster_retention set delete_on = ? where competition_id = ?")
			.params(LocalDate.of(2020, 1, 1), competition.value())
			.update();
		personal.delete(competition);
		assertThat(this.music.of(this.team).get(0).versions()).singleElement()
			.satisfies((version) -> assertThat(version.here()).isFalse());
		assertThat(this.database.sql("select actor from record_line where subject_id = ? and action = 'music.deleted'")
			.param(competition.toString())
			.query(String.class)
			.list()).containsExactly(Actor.system().name());
	}

	private MusicView.Version handIn(byte[] file) {
		return this.music.handIn(
				new Music.HandIn(this.team, this.segment, new ByteArrayResource(file), file.length, "music.mp3", ""),
				SECRETARY);
	}

	private void assertRefused(byte[] file, String code, String words) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> handIn(file)).satisfies((refused) -> {
			assertThat(refused.code()).isEqualTo(code);
			assertThat(refused.sentence().english()).contains(words);
		});
	}

	private List<String> lines(String action) {
		return this.database.sql(
				"select before_text || '>' || after_text from record_line where subject_id = ? and action = ? order by number")
			.params(this.team.toString(), action)
			.query(String.class)
			.list()
			.stream()
			.map((line) -> line.startsWith(">") ? line.substring(1) : line)
			.toList();
	}

}
