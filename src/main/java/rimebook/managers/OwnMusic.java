package rimebook.managers;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.core.io.InputStreamSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.music.Music;
import rimebook.music.MusicDeadlines;
import rimebook.music.MusicDesk;
import rimebook.music.MusicView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** The music of the team of a link: handed in, listened to, replaced. */
@Service
public class OwnMusic {

	private final OwnTeam own;

	private final Music music;

	private final MusicDesk desk;

	private final MusicDeadlines deadlines;

	OwnMusic(OwnTeam own, Music music, MusicDesk desk, MusicDeadlines deadlines) {
		this.own = own;
		this.music = music;
		this.desk = desk;
		this.deadlines = deadlines;
	}

	/** The music for each segment that takes place, in order. */
	@Transactional(readOnly = true)
	public List<Row> of(TeamLinks.Pass pass) {
		OwnTeam.About about = this.own.about(pass);
		List<MusicView> all = this.music.of(about.entry().id());
		return about.takingPlace().stream().map((segment) -> row(segment, all)).toList();
	}

	/**
	 * The music for one of them.
	 * @throws NotFoundException if there is no such segment
	 */
	@Transactional(readOnly = true)
	public Row of(TeamLinks.Pass pass, SegmentId segment) {
		return of(pass).stream()
			.filter((row) -> row.segment().id().equals(segment))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment", segment));
	}

	private Row row(SegmentView segment, List<MusicView> all) {
		MusicView music = all.stream()
			.filter((one) -> one.segment().equals(segment.id()))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment", segment.id()));
		return new Row(segment, music,
				music.versions().stream().map((file) -> new File(file, this.desk.found(segment, file))).toList(),
				this.desk.window(segment));
	}

	/** Until when music is handed in here, {@code null} for no deadline. */
	public @Nullable Instant until(TeamLinks.Pass pass) {
		return this.deadlines.of(this.own.about(pass).competition().id()).closesAt();
	}

	/** Why nothing is handed in here any more; empty while it is. */
	public Sentence refusal(TeamLinks.Pass pass) {
		OwnTeam.About about = this.own.about(pass);
		if (!about.entry().isEntered()) {
			return Sentence.of("managers.withdrawn");
		}
		return this.deadlines.isLate(about.competition().id()) ? Sentence.of("managers.music-late") : Sentence.NONE;
	}

	/** The largest file that is taken, in bytes. */
	public long mostBytes() {
		return this.desk.mostBytes();
	}

	/**
	 * Hand a file in.
	 * @throws ConflictException {@code own-team-withdrawn}; {@code music-late} after the
	 * deadline; and as {@link Music#handIn}
	 */
	public void handIn(TeamLinks.Pass pass, SegmentId segment, InputStreamSource file, long length, String name,
			Actor actor) {
		OwnTeam.About about = this.own.toChange(pass);
		requireInTime(about);
		this.music.handIn(new Music.HandIn(about.entry().id(), segment, file, length, name, ""), actor);
	}

	/**
	 * Say that the team brings its music to the rink, or take that back.
	 * @throws ConflictException as {@link #handIn}
	 */
	@Transactional
	public void onSite(TeamLinks.Pass pass, SegmentId segment, boolean onSite, Actor actor) {
		OwnTeam.About about = this.own.toChange(pass);
		requireInTime(about);
		this.music.onSite(about.entry().id(), segment, onSite, actor);
	}

	private void requireInTime(OwnTeam.About about) {
		if (this.deadlines.isLate(about.competition().id())) {
			throw new ConflictException("music-late", Sentence.of("managers.music-late"));
		}
	}

	/**
	 * One version with its bytes.
	 * @throws NotFoundException if it is not this team's
	 */
	@Transactional(readOnly = true)
	public Music.Content content(TeamLinks.Pass pass, MusicView.VersionId version) {
		Music.Content content = this.music.content(version);
		if (!content.entry().value().equals(pass.entry())) {
			throw NotFoundException.of("music", version);
		}
		return content;
	}

	/**
	 * The music for a segment.
	 *
	 * @param files the newest first
	 * @param window how long the programme may be
	 */
	public record Row(SegmentView segment, MusicView music, List<File> files, Sentence window) {
	}

	/** One version, and how it lies in the window. */
	public record File(MusicView.Version version, MusicDesk.Found found) {
	}

}
