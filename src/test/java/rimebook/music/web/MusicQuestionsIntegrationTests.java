package rimebook.music.web;

import java.time.Instant;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.ui.ExtendedModelMap;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.music.Music;
import rimebook.music.MusicPlays;
import rimebook.music.MusicView;
import rimebook.music.Tones;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** However many teams there are, the pages about music ask the database as often. */
@WholeApplication
class MusicQuestionsIntegrationTests {

	/** More than Hibernate loads at once of what nobody told it to load. */
	private static final int MANY = 40;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Music music;

	@Autowired
	private MusicPlays plays;

	@Autowired
	private MusicListController list;

	@Autowired
	private MusicDeskController desk;

	@Autowired
	private EntryMusicController entry;

	@Test
	void manyTeamsCostNoMoreQuestionsThanFew() {
		SegmentId few = played(2);
		int ofList = asked(() -> this.list.list(new ExtendedModelMap()));
		SegmentId many = played(MANY);
		assertThat(asked(() -> this.list.list(new ExtendedModelMap()))).isEqualTo(ofList).isLessThan(10);
		assertThat(asked(() -> this.desk.lines(many, new ExtendedModelMap())))
			.isEqualTo(asked(() -> this.desk.lines(few, new ExtendedModelMap())))
			.isLessThan(15);
		assertThat(asked(() -> this.music.withMusic(many))).as("of the stand")
			.isEqualTo(asked(() -> this.music.withMusic(few)))
			.isLessThan(5);
	}

	@Test
	void manyVersionsCostNoMoreQuestionsThanOne() {
		SmallCompetition day = SmallCompetition.running(this.context, 1, 3);
		EntryId team = day.entries().get(0).id();
		handIn(team, day.segment(1), 440);
		int one = asked(() -> this.entry.show(team, new ExtendedModelMap()));
		for (int pitch = 441; pitch < 460; pitch++) {
			handIn(team, day.segment(1), pitch);
		}
		assertThat(asked(() -> this.entry.show(team, new ExtendedModelMap()))).isEqualTo(one).isLessThan(15);
	}

	/** A segment of which every team but the last has music, which was played. */
	private SegmentId played(int teams) {
		SmallCompetition day = SmallCompetition.running(this.context, teams, 3);
		day.draw(1);
		day.entries().stream().limit(teams - 1).forEach((team) -> {
			MusicView.VersionId version = handIn(team.id(), day.segment(1), 440);
			this.plays.note(new MusicPlays.NotePlay(UUID.randomUUID(), version, Instant.now()), SECRETARY);
		});
		return day.segment(1);
	}

	private MusicView.VersionId handIn(EntryId team, SegmentId segment, int pitch) {
		byte[] file = Tones.wav(1000, pitch);
		return this.music
			.handIn(new Music.HandIn(team, segment, new ByteArrayResource(file), file.length, "a.wav", ""), SECRETARY)
			.id();
	}

	private static int asked(Runnable page) {
		return AskedByThisThread.during(page).size();
	}

}
