package rimebook.points;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.CardCorrected;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;

/**
 * Puts a corrected version on top of a closed card in points judging: one grade or one
 * mark of one seat. Who may ask for it and who approves it is decided by protests; here
 * the old version stays for ever.
 */
@Service
public class PointsCorrection {

	private final PerformanceRegister performances;

	private final PointsCardRepository cards;

	private final PointsBook book;

	private final Panels panels;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	PointsCorrection(PerformanceRegister performances, PointsCardRepository cards, PointsBook book, Panels panels,
			Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.performances = performances;
		this.cards = cards;
		this.book = book;
		this.panels = panels;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Return what counts now in one line of a closed card.
	 * @return the grade, or the mark in hundredths
	 * @throws ConflictException {@code card-not-closed} if the card can still be changed
	 * @throws RuleViolationException {@code line-unknown}
	 */
	@Transactional(readOnly = true)
	public int closedValue(PerformanceId performance, SeatId seat, PointsLine line) {
		PointsCard card = newest(this.performances.findClosed(performance), seat);
		return value(card.marks(), list(performance), line);
	}

	/**
	 * Check that a closed card could hold that value.
	 * @throws RuleViolationException naming the field {@code value} if it is out of range
	 */
	@Transactional(readOnly = true)
	public void check(PerformanceId performance, SeatId seat, PointsLine line, int value) {
		PerformanceView found = this.performances.findClosed(performance);
		PointsMarks marks = changed(newest(found, seat).marks(), list(performance), line, value);
		try {
			check(found).require(marks);
		}
		catch (RuleViolationException ex) {
			throw new RuleViolationException(ex.code(), "value", String.valueOf(ex.getMessage()));
		}
	}

	/**
	 * Put the new value in as the card's next version.
	 * @param expected the value the correction was decided on
	 * @param corrected the value that counts from now on
	 * @param reason why, for the record
	 * @param actor who approved it
	 * @throws ConflictException if the card is not closed, or no longer holds the
	 * expected value
	 */
	@Transactional
	public void correct(PerformanceId id, SeatId seat, PointsLine line, int expected, int corrected, String reason,
			Actor actor) {
		PerformanceView performance = this.performances.holdClosed(id);
		PointsCard old = newest(performance, seat);
		CalledListView list = list(id);
		if (value(old.marks(), list, line) != expected) {
			throw ConflictException.stale("card");
		}
		PointsMarks marks = changed(old.marks(), list, line, corrected);
		check(performance).require(marks);
		this.cards.save(new PointsCard(this.ids.next(), id, seat, old.sequence() + 1, list.sequence(), marks,
				CardOrigin.CORRECTION, this.clock.instant()));
		String label = this.panels.seat(seat).label() + ", " + line.words() + ": ";
		String words = label + line.words(expected) + " became " + line.words(corrected);
		this.events.publishEvent(new CardCorrected(id, performance.segment(), performance.entry(), words,
				AuditedChange.of(actor, "performance", id, "card.corrected")
					.from(label + line.words(expected), label + line.words(corrected))
					.because(reason)));
	}

	/** The card of a seat as it would be with that value. */
	static PointsMarks changed(PointsMarks marks, CalledListView list, PointsLine line, int value) {
		Map<UUID, Integer> grades = new LinkedHashMap<>(marks.grades());
		Map<String, Integer> components = new LinkedHashMap<>(marks.components());
		if (line.isElement()) {
			grades.put(element(list, line).id(), value);
		}
		else {
			components.put(line.component(), value);
		}
		return new PointsMarks(grades, components);
	}

	private static int value(PointsMarks marks, CalledListView list, PointsLine line) {
		Integer value = line.isElement() ? marks.grade(element(list, line)) : marks.component(line.component());
		if (value == null) {
			throw PointsLine.unknown();
		}
		return value;
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
