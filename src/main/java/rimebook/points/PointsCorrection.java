package rimebook.points;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.Amending;
import rimebook.performances.Amendment;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Puts a corrected version on top of a closed card in points judging: one grade or one
 * mark of one seat.
 */
@Service
class PointsCorrection implements Amending<LineAmendment> {

	private final PerformanceRegister performances;

	private final PointsCardRepository cards;

	private final PointsBook book;

	private final Panels panels;

	private final Acts acts;

	PointsCorrection(PerformanceRegister performances, PointsCardRepository cards, PointsBook book, Panels panels,
			Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.cards = cards;
		this.book = book;
		this.panels = panels;
	}

	@Override
	public Map<String, Class<? extends LineAmendment>> kinds() {
		return Map.of("line", LineAmendment.class);
	}

	/**
	 * {@inheritDoc}
	 * @throws RuleViolationException naming the field {@code value} if it is out of range
	 */
	@Override
	@Transactional(readOnly = true)
	public LineAmendment check(Amendment.SupposedChange<LineAmendment> change) {
		PerformanceView performance = this.performances.findClosed(change.performance());
		PointsMarks marks = newest(performance, change.judge()).marks();
		CalledListView list = list(performance.id());
		LineAmendment now = now(marks, list, change.amendment().line());
		if (now.equals(change.amendment())) {
			throw new RuleViolationException("nothing-to-correct", "value",
					Sentence.of("points.line-already-so", now.words()));
		}
		try {
			check(performance).require(changed(marks, list, change.amendment()));
		}
		catch (RuleViolationException ex) {
			throw new RuleViolationException(ex.code(), "value", ex.sentence());
		}
		return now;
	}

	@Override
	@Transactional
	public void apply(Amendment.SupposedChange<LineAmendment> change, LineAmendment expected, Approval approval) {
		PerformanceView performance = this.performances.holdClosed(change.performance());
		SeatId seat = change.judge();
		LineAmendment amendment = change.amendment();
		PointsCard old = newest(performance, seat);
		CalledListView list = list(performance.id());
		ConflictException.requireSeen("card", expected, now(old.marks(), list, amendment.line()));
		PointsMarks marks = changed(old.marks(), list, amendment);
		check(performance).require(marks);
		this.cards.save(new PointsCard(this.acts.nextId(), performance.id(), seat, old.sequence() + 1,
				new PointsCard.Given(list.sequence(), marks),
				new PointsCard.Receipt(CardOrigin.CORRECTION, this.acts.now())));
		Sentence place = Sentence.of("note.place.on-card", this.panels.seat(seat).spoken(), amendment.spokenPlace());
		this.acts.publish(PerformanceEvent.CardCorrected.of(performance, "card.corrected",
				new PerformanceEvent.CardCorrected.Words(place, expected.spoken(), amendment.spoken()), approval));
	}

	/** The card of a seat as it would be with that value. */
	static PointsMarks changed(PointsMarks marks, CalledListView list, LineAmendment amendment) {
		PointsLine line = amendment.line();
		Map<UUID, Integer> grades = new LinkedHashMap<>(marks.grades());
		Map<String, Integer> components = new LinkedHashMap<>(marks.components());
		if (line.isElement()) {
			grades.put(element(list, line).id(), amendment.value());
		}
		else {
			components.put(line.component(), amendment.value());
		}
		return new PointsMarks(grades, components);
	}

	private static LineAmendment now(PointsMarks marks, CalledListView list, PointsLine line) {
		Integer value = line.isElement() ? marks.grade(element(list, line)) : marks.component(line.component());
		if (value == null) {
			throw PointsLine.unknown();
		}
		return LineAmendment.of(line, value);
	}

	private static CalledElement element(CalledListView list, PointsLine line) {
		return list.counting()
			.stream()
			.filter((element) -> element.number() == line.element())
			.findFirst()
			.orElseThrow(PointsLine::unknown);
	}

	private PointsCardCheck check(PerformanceView performance) {
		return new PointsCardCheck(this.book.rules(performance.segment()), Optional.of(list(performance.id())));
	}

	private CalledListView list(PerformanceId performance) {
		return this.book.list(performance)
			.map(CalledList::view)
			.orElseThrow(() -> NotFoundException.of("list", performance));
	}

	private PointsCard newest(PerformanceView performance, SeatId seat) {
		return this.book.card(performance.id(), seat).orElseThrow(() -> NotFoundException.of("card", seat));
	}

}
