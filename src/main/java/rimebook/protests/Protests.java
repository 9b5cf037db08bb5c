package rimebook.protests;

import java.time.Clock;
import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.results.ResultPublication;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/** Takes protests and the referee's decisions on them. */
@Service
public class Protests {

	private final ProtestRepository protests;

	private final ProtestClock limits;

	private final Standings standings;

	private final ResultPublication publication;

	private final Entries entries;

	private final Competitions competitions;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	Protests(ProtestRepository protests, ProtestClock limits, Standings standings, ResultPublication publication,
			Entries entries, Competitions competitions, Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.protests = protests;
		this.limits = limits;
		this.standings = standings;
		this.publication = publication;
		this.entries = entries;
		this.competitions = competitions;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Take a protest. One that is out of time or about an evaluation is kept too, refused
	 * with the rule, so that it leaves a trace.
	 * @return the protest, filed or refused
	 * @throws RuleViolationException if a field is missing, the team is not of the event,
	 * the segment has not begun, or the time handed in lies ahead
	 */
	@Transactional
	public ProtestView file(FileProtest filed, Actor actor) {
		SegmentResultView result = held(filed.segment());
		requireTeamOfEvent(filed);
		Instant now = this.clock.instant();
		Instant handedIn = handedIn(filed.handedInAt(), now);
		Protest protest = new Protest(this.ids.next(), filed, Required.text("text", filed.text(), 2000),
				Required.text("filedBy", filed.filedBy(), 120), actor.name(), handedIn);
		this.limits.refusal(filed.category(), handedIn, result.postedAt())
			.ifPresent((rule) -> protest.refuse(rule, now));
		this.protests.save(protest);
		ProtestView view = protest.view();
		this.events.publishEvent(line(actor, view.id(), "protest.filed").to(words(view)).because(view.grounds()));
		return view;
	}

	/**
	 * Decide a protest with grounds.
	 * @throws rimebook.shared.ConflictException if it is decided already, or the referee
	 * filed it
	 */
	@Transactional
	public ProtestView decide(ProtestId id, int version, boolean upheld, String grounds, Actor actor) {
		Protest protest = this.protests.findById(id.value()).orElseThrow(() -> NotFoundException.of("protest", id));
		protest.requireVersion(version);
		String before = protest.view().state().name().toLowerCase();
		protest.decide(upheld, Required.text("grounds", grounds, 2000), actor.name(), this.clock.instant());
		ProtestView view = protest.view();
		this.events.publishEvent(line(actor, id, "protest.decided").from(before, view.state().name().toLowerCase())
			.because(view.grounds()));
		return view;
	}

	/** List the protests of a segment in the order they were handed in. */
	@Transactional(readOnly = true)
	public List<ProtestView> ofSegment(SegmentId segment) {
		return this.protests.findBySegmentOrderByFiledAt(segment.value()).stream().map(Protest::view).toList();
	}

	/**
	 * Return until when a protest of this category is heard, UTC; {@code null} if it
	 * never is or the result is not posted yet.
	 */
	@Transactional(readOnly = true)
	public @Nullable Instant heardUntil(SegmentId segment, ProtestCategory category) {
		Instant postedAt = this.standings.result(segment).map(SegmentResultView::postedAt).orElse(null);
		return (postedAt == null) ? null : this.limits.limit(category).map(postedAt::plus).orElse(null);
	}

	private SegmentResultView held(SegmentId segment) {
		return this.publication.hold(segment)
			.orElseThrow(() -> new RuleViolationException("segment-not-begun",
					"This segment has not begun; there is nothing to protest against yet."));
	}

	private void requireTeamOfEvent(FileProtest filed) {
		if (!this.entries.entry(filed.entry()).event().equals(this.competitions.eventOf(filed.segment()).id())) {
			throw new RuleViolationException("team-not-of-event", "entry",
					"The field 'entry' must be a team of this event.");
		}
	}

	private static Instant handedIn(@Nullable Instant given, Instant now) {
		if (given != null && given.isAfter(now)) {
			throw new RuleViolationException("time-ahead", "handedInAt",
					"The field 'handedInAt' lies ahead; give the time at which the protest was handed in.");
		}
		return (given != null) ? given : now;
	}

	private static AuditedChange line(Actor actor, ProtestId id, String action) {
		return AuditedChange.of(actor, "protest", id, action);
	}

	private static String words(ProtestView protest) {
		return protest.state().name().toLowerCase() + ", " + protest.category().name().toLowerCase() + ", by "
				+ protest.filedBy() + " at " + protest.filedAt() + ": " + protest.text();
	}

}
