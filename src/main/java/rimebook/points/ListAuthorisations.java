package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * The technical controller authorises the called elements once every review is settled.
 * The word stands for that version of the list only; points are computed from an
 * authorised list and whole cards, so nothing is closed before.
 */
@Service
public class ListAuthorisations {

	private final PerformanceRegister performances;

	private final ControllersWord words;

	private final PointsBook book;

	private final LateDeductions late;

	private final Acts acts;

	ListAuthorisations(PerformanceRegister performances, ControllersWord words, PointsBook book, LateDeductions late,
			Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.words = words;
		this.book = book;
		this.late = late;
	}

	/**
	 * Authorise a version of the called elements at the technical desk.
	 * @param sequence the version that was read back
	 * @param actor the technical controller
	 * @return the word as it stands; for a repetition the first one again, which then
	 * covers the deductions noted since
	 * @throws RuleViolationException {@code elements-not-called}, or {@code review-open}
	 * naming the element
	 * @throws ConflictException {@code list-changed} if that version is no longer the
	 * newest, {@code card-closed} or {@code performance-not-open}
	 * @throws NotFoundException if there is no such performance
	 */
	@Transactional
	public Authorised authorise(PerformanceId performance, int sequence, Actor actor) {
		return keep(performance, sequence, new ListAuthorisation.Word(actor.name(), actor.name(), false), actor);
	}

	/**
	 * Take the controller's signature on paper for a version of the called elements;
	 * errors as for {@link #authorise}.
	 * @param controller the name that signed
	 * @param actor who has the paper in hand
	 */
	@Transactional
	public Authorised confirmPaper(PerformanceId performance, int sequence, String controller, Actor actor) {
		return keep(performance, sequence,
				new ListAuthorisation.Word(Required.text("controller", controller, 120), actor.name(), true), actor);
	}

	private Authorised keep(PerformanceId id, int sequence, ListAuthorisation.Word word, Actor actor) {
		PerformanceView performance = this.performances.hold(id);
		PerformanceRegister.requireOnIce(performance);
		CalledList list = this.book.list(id)
			.filter((newest) -> !newest.elements().isEmpty())
			.orElseThrow(() -> new RuleViolationException("elements-not-called",
					Sentence.of("points.nothing-to-authorise")));
		requireCurrent(list, sequence);
		requireSettled(list.elements());
		if (this.words.on(list).isEmpty()) {
			write(list, word, actor);
		}
		this.late.note(id, word.controller(), actor);
		return this.words.on(list).orElseThrow();
	}

	private void write(CalledList list, ListAuthorisation.Word word, Actor actor) {
		PerformanceId performance = new PerformanceId(list.performance());
		ListAuthorisation authorisation = new ListAuthorisation(this.acts.nextId(), performance, list.sequence(), word,
				this.acts.now());
		this.words.keep(authorisation);
		this.acts.publish(AuditedChange.of(actor, "performance", performance, "elements.authorised")
			.from("open", "authorised by " + authorisation.view(0).inWords() + ": " + list.inWords()));
	}

	private static void requireCurrent(CalledList list, int sequence) {
		if (list.sequence() != sequence) {
			throw new ConflictException("list-changed", Sentence.of("points.list-changed"));
		}
	}

	private static void requireSettled(List<CalledElement> elements) {
		Sentence open = Series
			.withCommas(elements.stream().filter(CalledElement::review).map(CalledElement::spoken).toList());
		if (!open.isEmpty()) {
			throw new RuleViolationException("review-open", Sentence.of("points.review-open", open));
		}
	}

	/** Return the word for the newest list; empty while that one is open. */
	@Transactional(readOnly = true)
	public Optional<Authorised> ofPerformance(PerformanceId performance) {
		return this.book.list(performance).flatMap(this.words::on);
	}

	/**
	 * Who authorised a version of the called elements.
	 *
	 * @param sequence the version of the list
	 * @param controller the technical controller
	 * @param confirmedBy who said so: the controller at the desk, or who saw the
	 * signature
	 * @param onPaper whether the controller signed on paper
	 * @param receivedAt when, UTC
	 * @param deductionsSeen the newest version of the deductions that a controller has
	 * seen
	 */
	public record Authorised(int sequence, String controller, String confirmedBy, boolean onPaper, Instant receivedAt,
			int deductionsSeen) {

		/** Write as on the record: "A. Name", "A. Name on paper, seen by B. Name". */
		String inWords() {
			return this.onPaper ? this.controller + " on paper, seen by " + this.confirmedBy : this.controller;
		}

	}

}
