package rimebook.music;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Until when a competition takes music. Afterwards it is taken with a reason, since a
 * file that will not play is found on the day.
 */
@Service
@Transactional(readOnly = true)
public class MusicDeadlines {

	private final MusicDeadlineRepository deadlines;

	private final Competitions competitions;

	private final Acts acts;

	MusicDeadlines(MusicDeadlineRepository deadlines, Competitions competitions, Acts acts) {
		this.deadlines = deadlines;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Set the deadline, or take it away; nothing happens where it stands so.
	 * @param seen the number of the deadline that the person was looking at, 0 for none
	 * @throws ConflictException {@code stale-version}
	 * @throws RuleViolationException {@code music-no-events} while the competition has no
	 * event
	 */
	@Transactional
	public void set(CompetitionId competition, int seen, @Nullable Instant closesAt, Actor actor) {
		EventView event = this.competitions.events(competition)
			.stream()
			.findFirst()
			.orElseThrow(() -> new RuleViolationException("music-no-events", Sentence.of("music.no-events")));
		this.competitions.holding(event.id());
		Deadline before = of(competition);
		ConflictException.requireSeen("music-deadline", seen, before.number());
		Instant next = (closesAt != null) ? closesAt.truncatedTo(ChronoUnit.MINUTES) : null;
		if (Objects.equals(before.closesAt(), next)) {
			return;
		}
		this.deadlines
			.saveAndFlush(new MusicDeadline(this.acts.nextId(), competition, seen + 1, next, actor, this.acts.now()));
		this.acts.publish(AuditedChange.of(actor, "music", competition, "music.deadline-set")
			.from(before.inWords(), new Deadline(seen + 1, next).inWords()));
	}

	/** The deadline of a competition. */
	public Deadline of(CompetitionId competition) {
		return this.deadlines.findFirstByCompetitionOrderByNumberDesc(competition.value())
			.map(Deadline::of)
			.orElse(Deadline.NONE);
	}

	/** The deadlines of those of the competitions for which one was ever set. */
	public Map<CompetitionId, Deadline> of(Collection<CompetitionId> competitions) {
		return this.deadlines
			.findByCompetitionInOrderByNumberDesc(competitions.stream().map(CompetitionId::value).toList())
			.stream()
			.collect(Collectors.toMap((row) -> new CompetitionId(row.competition()), Deadline::of,
					(newest, older) -> newest));
	}

	/** Tell whether music is taken with a reason only. */
	public boolean isLate(CompetitionId competition) {
		return Optional.ofNullable(of(competition).closesAt())
			.filter((closes) -> this.acts.now().isAfter(closes))
			.isPresent();
	}

	/**
	 * The reason to be kept: none in time.
	 * @throws RuleViolationException {@code field-missing} if it is too late without one
	 */
	String admit(CompetitionId competition, String reason) {
		return isLate(competition) ? Required.text("handInReason", reason, 500) : "";
	}

	/**
	 * Until when music is taken without a reason.
	 *
	 * @param number give it back with a change, so that nobody overwrites another's
	 * @param closesAt {@code null} for ever
	 */
	public record Deadline(int number, @Nullable Instant closesAt) {

		public static final Deadline NONE = new Deadline(0, null);

		private static Deadline of(MusicDeadline row) {
			return new Deadline(row.number(), row.closesAt());
		}

		/** As on the record. */
		String inWords() {
			return (this.closesAt != null) ? "until " + this.closesAt : "no deadline";
		}

	}

}
