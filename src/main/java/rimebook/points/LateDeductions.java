package rimebook.points;

import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Deductions that were changed after the called elements were authorised. They count, and
 * the technical controller, who authorised without them, is asked to look at them: until
 * somebody at the technical desk says so, the list is authorised anew, or the cards are
 * closed, for which nothing waits (common practice: the rules name no second word of the
 * controller).
 */
@Service
public class LateDeductions {

	private final PerformanceRegister performances;

	private final ControllersWord words;

	private final PointsBook book;

	private final Acts acts;

	LateDeductions(PerformanceRegister performances, ControllersWord words, PointsBook book, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.words = words;
		this.book = book;
	}

	/** The deductions as they are now, if the controller is to look at them. */
	@Transactional(readOnly = true)
	public Optional<DeductionNotes.DeductionListView> ofPerformance(PerformanceId performance) {
		return this.book.list(performance)
			.flatMap(this.words::on)
			.flatMap((word) -> this.book.deductions(performance)
				.filter((list) -> list.sequence() > word.deductionsSeen()))
			.map(DeductionList::view);
	}

	/**
	 * Say that the controller has seen the deductions; done once, however often it is
	 * said.
	 * @param sequence the version that was looked at
	 * @param actor the technical controller
	 * @throws ConflictException {@code deductions-changed} if that version is no longer
	 * the newest, {@code card-closed} or {@code performance-not-open}
	 */
	@Transactional
	public void see(PerformanceId id, int sequence, Actor actor) {
		PerformanceRegister.requireOnIce(this.performances.hold(id));
		if (newest(id) != sequence) {
			throw new ConflictException("deductions-changed", Sentence.of("points.deductions-changed"));
		}
		note(id, actor.name(), actor);
	}

	/** Whoever authorises the list has the deductions of the moment before the eyes. */
	void note(PerformanceId id, String controller, Actor actor) {
		int now = newest(id);
		if (this.words.deductionsSeen(id).orElse(-1) >= now) {
			return;
		}
		this.words.keep(new DeductionsSeen(this.acts.nextId(), id, now, controller, actor, this.acts.now()));
		this.book.deductions(id)
			.ifPresent((list) -> this.acts.publish(AuditedChange.of(actor, "performance", id, "deductions.seen")
				.from("not seen by the controller", "seen by " + controller + ": " + list.inWords())));
	}

	private int newest(PerformanceId id) {
		return this.book.deductions(id).map(DeductionList::sequence).orElse(0);
	}

}
