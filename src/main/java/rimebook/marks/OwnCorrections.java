package rimebook.marks;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.shared.NotFoundException;

/**
 * What officials changed in one seat's closed cards, so that its judge is told. No other
 * seat's cards are read.
 */
@Component
class OwnCorrections {

	private final CardSubmissionRepository pairs;

	private final PointsCardRepository cards;

	private final CalledListRepository lists;

	private final PerformanceRepository performances;

	private final Competitions competitions;

	OwnCorrections(CardSubmissionRepository pairs, PointsCardRepository cards, CalledListRepository lists,
			PerformanceRepository performances, Competitions competitions) {
		this.pairs = pairs;
		this.cards = cards;
		this.lists = lists;
		this.performances = performances;
		this.competitions = competitions;
	}

	/** Every correction of the seat's cards in all segments of its event. */
	List<JudgeTable.Corrected> of(SeatId seat) {
		return Stream.concat(ofPairs(seat.value()), ofPoints(seat.value())).toList();
	}

	private Stream<JudgeTable.Corrected> ofPairs(UUID seat) {
		List<CardSubmission> corrected = this.pairs.findBySeatAndOrigin(seat, CardOrigin.CORRECTION);
		if (corrected.isEmpty()) {
			return Stream.empty();
		}
		List<CardSubmission> versions = this.pairs.findBySeatAndPerformanceInOrderBySequence(seat,
				performances(corrected));
		return corrected.stream()
			.map((card) -> told(card, MarkWords.of(before(card, versions).marks()), MarkWords.of(card.marks())));
	}

	private static CardSubmission before(CardSubmission card, List<CardSubmission> versions) {
		return versions.stream()
			.filter((older) -> older.performance().equals(card.performance())
					&& older.sequence() == card.sequence() - 1)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("card", card.getId()));
	}

	private Stream<JudgeTable.Corrected> ofPoints(UUID seat) {
		List<PointsCard> corrected = this.cards.findBySeatAndOrigin(seat, CardOrigin.CORRECTION);
		if (corrected.isEmpty()) {
			return Stream.empty();
		}
		List<PointsCard> versions = this.cards.findBySeatAndPerformanceInOrderBySequence(seat, performances(corrected));
		List<CalledElement> elements = this.lists.findByPerformanceInOrderBySequence(performances(corrected))
			.stream()
			.flatMap((list) -> list.elements().stream())
			.toList();
		return corrected.stream().map((card) -> {
			PointsMarks before = before(card, versions).marks();
			return told(card, words(before, card.marks(), elements), words(card.marks(), before, elements));
		});
	}

	private static PointsCard before(PointsCard card, List<PointsCard> versions) {
		return versions.stream()
			.filter((older) -> older.performance().equals(card.performance())
					&& older.sequence() == card.sequence() - 1)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("card", card.getId()));
	}

	/** The lines of a card in which it differs from the other. */
	private static String words(PointsMarks marks, PointsMarks other, List<CalledElement> elements) {
		Stream<String> grades = marks.grades()
			.entrySet()
			.stream()
			.filter((grade) -> !Objects.equals(other.grades().get(grade.getKey()), grade.getValue()))
			.map((grade) -> label(grade.getKey(), elements) + " " + PointsWords.grade(grade.getValue()));
		Stream<String> components = marks.components()
			.entrySet()
			.stream()
			.filter((mark) -> !Objects.equals(other.component(mark.getKey()), mark.getValue()))
			.map((mark) -> mark.getKey() + " " + PointsWords.of(mark.getValue()));
		return Stream.concat(grades, components).collect(Collectors.joining(", "));
	}

	/** The element as it was called last. */
	private static String label(UUID element, List<CalledElement> elements) {
		return elements.stream()
			.filter((called) -> called.id().equals(element))
			.reduce((earlier, later) -> later)
			.map((called) -> called.number() + " " + called.code())
			.orElse("");
	}

	private JudgeTable.Corrected told(PerformanceLine card, String before, String after) {
		Performance performance = this.performances.findById(card.performance())
			.orElseThrow(() -> NotFoundException.of("performance", card.performance()));
		return new JudgeTable.Corrected(card.getId(), performance.startNumber(), segment(performance.segment()), before,
				after);
	}

	private String segment(SegmentId segment) {
		return this.competitions.eventOf(segment).segment(segment).name();
	}

	private static Set<UUID> performances(List<? extends PerformanceLine> cards) {
		return cards.stream().map(PerformanceLine::performance).collect(Collectors.toSet());
	}

}
