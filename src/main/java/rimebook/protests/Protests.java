package rimebook.protests;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.People;
import rimebook.competition.SegmentId;
import rimebook.results.ResultPublication;
import rimebook.results.SegmentResultView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Takes protests and the referee's decisions on them. */
@Service
public class Protests {

	private final ProtestRepository protests;

	private final Claims claims;

	private final ResultPublication publication;

	private final People people;

	private final Acts acts;

	Protests(ProtestRepository protests, Claims claims, ResultPublication publication, People people, Acts acts) {
		this.acts = acts;
		this.protests = protests;
		this.claims = claims;
		this.publication = publication;
		this.people = people;
	}

	/**
	 * Take a protest. One that is out of time or about an evaluation is kept too, refused
	 * with the rule, so that it leaves a trace. One written down after the end of its
	 * time as handed in before waits until a second official confirms that.
	 * @return the protest, filed, refused or to be confirmed
	 * @throws RuleViolationException if a field is missing, the team is not of the event,
	 * the segment has not begun, the posting is none of the segment, or the time handed
	 * in lies ahead
	 */
	@Transactional
	public ProtestView file(FileProtest filed, Actor actor) {
		requireBegun(filed.segment());
		this.claims.requireTeamOfEvent(filed);
		Instant now = this.acts.now();
		Instant handedIn = handedIn(filed.handedInAt(), now);
		SegmentResultView.Posting posting = this.claims.posting(filed);
		String filer = Name.required("filedBy", filed.filedBy());
		Protest protest = new Protest(this.acts.nextId(), filed, Required.text("text", filed.claim().text(), 2000),
				filer, new Protest.Receipt(actor, identity(filer, actor), handedIn, now,
						(posting != null) ? posting.number() : 0));
		Optional<Sentence> refusal = ProtestClock.refusal(filed.claim().category(), handedIn, posting);
		refusal.ifPresent((rule) -> protest.refuse(rule, now));
		if (refusal.isEmpty() && ProtestClock.isLate(filed.claim().category(), now, posting)) {
			protest.claimEarlier();
		}
		this.protests.save(protest);
		ProtestView view = protest.view();
		this.acts.publish(
				line(actor, view.id(), "protest.filed").to(words(view)).because(view.decision().grounds().english()));
		return view;
	}

	/** Whose account the filer's name belongs to now; names change, accounts do not. */
	private String identity(String filer, Actor actor) {
		return actor.goesBy(filer) ? actor.id() : this.people.identityOf(filer);
	}

	/**
	 * Confirm that a protest was handed in before its time was over, or say that it was
	 * not: then it is not heard.
	 * @param grounds how that is known; needed where it is not confirmed
	 * @throws rimebook.shared.ConflictException {@code two-names-needed} for whoever
	 * wrote it down, {@code protest-confirmed} if it does not wait for that
	 */
	@Transactional
	public ProtestView confirm(ProtestView.ProtestId id, int version, boolean inTime, String grounds, Actor actor) {
		Protest protest = found(id, version);
		String why = inTime ? Required.optional("grounds", grounds, 1900) : Required.text("grounds", grounds, 1900);
		protest.confirm(inTime, why, actor, this.acts.now());
		ProtestView view = protest.view();
		this.acts.publish(
				line(actor, id, inTime ? "protest.confirmed" : "protest.not-confirmed")
					.from("handed in at " + view.filing().filedAt() + ", as " + view.filing().receivedBy()
							+ " wrote down", view.state().name().toLowerCase())
					.because(why));
		return view;
	}

	/**
	 * Decide a protest with grounds.
	 * @throws rimebook.shared.ConflictException if it is decided already, or the referee
	 * filed it
	 */
	@Transactional
	public ProtestView decide(ProtestView.ProtestId id, int version, boolean upheld, String grounds, Actor actor) {
		Protest protest = found(id, version);
		String before = protest.view().state().name().toLowerCase();
		protest.decide(upheld, Required.text("grounds", grounds, 2000), actor, this.acts.now());
		ProtestView view = protest.view();
		this.acts.publish(line(actor, id, "protest.decided").from(before, view.state().name().toLowerCase())
			.because(view.decision().grounds().english()));
		return view;
	}

	/** List the protests of a segment in the order they were handed in. */
	@Transactional(readOnly = true)
	public List<ProtestView> ofSegment(SegmentId segment) {
		return this.protests.findBySegmentOrderByFiledAt(segment.value()).stream().map(Protest::view).toList();
	}

	/** How many protests of a segment somebody still has to decide. */
	@Transactional(readOnly = true)
	public int pending(SegmentId segment) {
		return this.protests.countBySegmentAndStateIn(segment.value(), ProtestView.State.open());
	}

	/**
	 * A number that goes up with every change of the protests of these segments; 0 where
	 * there are none.
	 */
	@Transactional(readOnly = true)
	public int changes(Collection<SegmentId> segments) {
		return Math.toIntExact(this.protests.changes(segments.stream().map(SegmentId::value).toList()));
	}

	private Protest found(ProtestView.ProtestId id, int version) {
		Protest protest = this.protests.findById(id.value()).orElseThrow(() -> NotFoundException.of("protest", id));
		this.publication.hold(protest.view().segment());
		protest.requireVersion(version);
		return protest;
	}

	/** The hold also refuses at the end of the competition. */
	private void requireBegun(SegmentId segment) {
		if (this.publication.hold(segment).isEmpty()) {
			throw new RuleViolationException("segment-not-begun", Sentence.of("protests.segment-not-begun"));
		}
	}

	private static Instant handedIn(@Nullable Instant given, Instant now) {
		if (given != null && given.isAfter(now)) {
			throw RuleViolationException.ofField("time-ahead", "handedInAt", Sentence.of("protests.time-ahead"));
		}
		return (given != null) ? given : now;
	}

	private static AuditedChange line(Actor actor, ProtestView.ProtestId id, String action) {
		return AuditedChange.of(actor, "protest", id, action);
	}

	private static String words(ProtestView protest) {
		return protest.state().name().toLowerCase() + ", " + protest.claim().category().name().toLowerCase()
				+ ", against "
				+ ((protest.claim().posting() > 0) ? "version " + protest.claim().posting() : "what is not posted yet")
				+ ", by " + protest.filing().filedBy() + " at " + protest.filing().filedAt() + ": "
				+ protest.claim().text();
	}

	/**
	 * A protest as handed in.
	 *
	 * @param claim against what; of posting 0, against the version that was posted last
	 * @param filedBy the person who protests for it
	 * @param handedInAt when, UTC; {@code null} for now
	 */
	public record FileProtest(SegmentId segment, ProtestView.Claim claim, String filedBy,
			@Nullable Instant handedInAt) {

	}

}
