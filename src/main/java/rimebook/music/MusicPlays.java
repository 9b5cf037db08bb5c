package rimebook.music;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What the music desk played. It is a fact, so it is noted whatever has become of the
 * segment since: a desk without network tells it later, as often as it takes until it is
 * answered.
 */
@Service
public class MusicPlays {

	/** A clock of the desk that is ahead by less is believed. */
	private static final Duration AHEAD = Duration.ofMinutes(5);

	/** No desk is without network for longer. */
	private static final Duration LONGEST_UNTOLD = Duration.ofDays(14);

	private final MusicPlayRepository plays;

	private final MusicVersionRepository versions;

	private final Competitions competitions;

	private final Acts acts;

	MusicPlays(MusicPlayRepository plays, MusicVersionRepository versions, Competitions competitions, Acts acts) {
		this.plays = plays;
		this.versions = versions;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Note that a file began to play. Nothing happens where it was noted already.
	 * @throws ConflictException {@code play-differs} if something else was noted under
	 * that identity
	 * @throws RuleViolationException {@code play-time} if the time cannot be
	 * @throws NotFoundException if there is no such file
	 */
	@Transactional
	public void note(NotePlay told, Actor actor) {
		MusicVersion version = this.versions.findById(told.version().value())
			.orElseThrow(() -> NotFoundException.of("music", told.version()));
		// Whoever tells the same twice at once waits, and then finds it noted.
		this.competitions.holding(this.competitions.eventOf(version.segment()).id());
		Optional<MusicPlay> known = this.plays.findById(told.id());
		if (known.isPresent()) {
			requireSame(known.get(), told);
			return;
		}
		Instant started = possible(told.startedAt());
		this.plays.saveAndFlush(new MusicPlay(told.id(), version, started, actor, this.acts.now()));
		this.acts.publish(AuditedChange.of(actor, "music", version.entry(), "music.played")
			.to(version.inWords(segment(version.segment())) + ", begun " + started.truncatedTo(ChronoUnit.SECONDS)));
	}

	private static void requireSame(MusicPlay known, NotePlay told) {
		if (!known.tells(told)) {
			throw new ConflictException("play-differs", Sentence.of("music.play-differs"));
		}
	}

	private Instant possible(Instant started) {
		Instant now = this.acts.now();
		if (started.isAfter(now.plus(AHEAD)) || started.isBefore(now.minus(LONGEST_UNTOLD))) {
			throw new RuleViolationException("play-time", "startedAt", Sentence.of("music.play-time"));
		}
		return started.truncatedTo(ChronoUnit.MILLIS);
	}

	private String segment(SegmentId segment) {
		return this.competitions.eventOf(segment).segment(segment).name();
	}

	/** What was played in a segment, by team, the earliest first. */
	@Transactional(readOnly = true)
	public Map<EntryId, List<Played>> ofSegment(SegmentId segment) {
		return this.plays.findBySegmentOrderByStartedAt(segment.value())
			.stream()
			.collect(Collectors.groupingBy((play) -> new EntryId(play.entry()),
					Collectors.mapping(MusicPlay::view, Collectors.toList())));
	}

	/** Those of the segments in which something was played. */
	@Transactional(readOnly = true)
	public Set<SegmentId> begun(Collection<SegmentId> segments) {
		return this.plays.played(segments.stream().map(SegmentId::value).toList())
			.stream()
			.map(SegmentId::new)
			.collect(Collectors.toSet());
	}

	/**
	 * That a file began to play.
	 *
	 * @param id the desk's own, the same however often it tells
	 * @param startedAt when, by the desk's clock
	 */
	public record NotePlay(UUID id, MusicView.VersionId version, Instant startedAt) {
	}

	/** A file that was played. */
	public record Played(MusicView.VersionId version, Instant startedAt, String by) {
	}

}
