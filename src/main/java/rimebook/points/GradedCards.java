package rimebook.points;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.paper.CardKeyings;
import rimebook.paper.PaperState;
import rimebook.performances.Amendment;
import rimebook.performances.CardBook;
import rimebook.performances.ClosedMarks;
import rimebook.performances.CountingPanel;
import rimebook.performances.JudgesCard;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** The cards of points judging as the run of a segment asks for them. */
@Component
class GradedCards implements CardBook {

	private final PointsBook book;

	private final ControllersWord words;

	private final PointsSheets sheets;

	private final CardKeyings keyings;

	GradedCards(PointsBook book, ControllersWord words, PointsSheets sheets, CardKeyings keyings) {
		this.book = book;
		this.words = words;
		this.sheets = sheets;
		this.keyings = keyings;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPoints();
	}

	@Override
	public boolean allowsAbsentCard() {
		return true;
	}

	@Override
	public boolean anySentFor(PerformanceId performance) {
		return this.book.anySentFor(performance) || this.keyings.any(performance);
	}

	@Override
	public Map<SeatId, CardBook.SentCard> sentFor(PerformanceView performance) {
		Map<SeatId, CardBook.SentCard> sent = new LinkedHashMap<>();
		this.book.cards(performance.id())
			.forEach((seat, card) -> sent.put(seat,
					new CardBook.SentCard(words(card.marks()), card.sequence(), card.acknowledged().receivedAt())));
		return sent;
	}

	private static String words(PointsMarks marks) {
		return marks.grades().size() + ((marks.grades().size() == 1) ? " grade" : " grades");
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, SeatView seat) {
		return missing(seat, this.book.cards(performance.id()).get(seat.id()), wholeCard(performance));
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, List<SeatView> seats) {
		WholeCard whole = wholeCard(performance);
		Optional<CalledList> list = whole.lists().newest().filter((called) -> !called.elements().isEmpty());
		List<Sentence> missing = new ArrayList<>();
		if (list.isEmpty()) {
			missing.add(Sentence.of("points.missing.called-elements"));
		}
		Map<SeatId, PointsCard> sent = this.book.cards(performance.id());
		for (SeatView seat : seats) {
			missing.addAll(missing(seat, sent.get(seat.id()), whole));
		}
		list.ifPresent((called) -> missing.addAll(unsettled(called)));
		return missing;
	}

	private WholeCard wholeCard(PerformanceView performance) {
		return new WholeCard(this.keyings.of(performance.id()), this.book.lists(performance.id()),
				this.book.rules(performance.segment()).components());
	}

	private static List<Sentence> missing(SeatView seat, @Nullable PointsCard card, WholeCard whole) {
		CalledLists lists = whole.lists();
		PaperState paper = whole.keyed().state(seat.id(), (card != null) ? card.held(lists) : null);
		if (paper.isUnsettled()) {
			return List.of(paper.behind(seat.spoken()));
		}
		Optional<CalledListView> list = lists.newest().map(CalledList::view);
		List<Sentence> missing = new ArrayList<>();
		lack(seat, card, list, whole.components()).ifPresent(missing::add);
		lists.toConfirm(card)
			.forEach((element) -> missing
				.add(Sentence.of("points.missing.confirm", seat.spoken(), element.number(), element.code())));
		lists.takenOut(card)
			.forEach((element) -> missing
				.add(Sentence.of("points.missing.confirm-taken-out", seat.spoken(), element.spoken())));
		return missing;
	}

	/** What keeps the list from counting: open reviews, else the controller's word. */
	private List<Sentence> unsettled(CalledList list) {
		List<Sentence> reviews = list.elements()
			.stream()
			.filter(CalledElement::review)
			.map((element) -> Sentence.of("points.missing.review", element.spoken()))
			.toList();
		if (!reviews.isEmpty()) {
			return reviews;
		}
		return list.isCorrected() || this.words.on(list).isPresent() ? List.of()
				: List.of(Sentence.of("points.missing.authorisation"));
	}

	/** What a seat's card lacks; the seat alone for the whole card. */
	private static Optional<Sentence> lack(SeatView seat, @Nullable PointsCard card, Optional<CalledListView> list,
			List<SegmentRules.ComponentRule> components) {
		if (card == null) {
			return Optional.of(seat.spoken());
		}
		List<Object> lacks = new ArrayList<>();
		list.map(CalledListView::counting)
			.orElse(List.of())
			.stream()
			.filter((element) -> card.marks().grade(element) == null)
			.forEach((element) -> lacks.add(Sentence.of("points.missing.element", element.number())));
		components.stream()
			.filter((component) -> card.marks().component(component.name()) == null)
			.forEach((component) -> lacks.add(component.name()));
		return lacks.isEmpty() ? Optional.empty()
				: Optional.of(Sentence.of("points.missing.on-card", seat.spoken(), Series.withCommas(lacks)));
	}

	@Override
	public List<String> soFar(PerformanceView performance, CountingPanel panel) {
		List<CalledElement> elements = this.book.list(performance.id()).map(CalledList::elements).orElse(List.of());
		List<String> lines = new ArrayList<>();
		if (!elements.isEmpty()) {
			lines.add("Elements: " + CalledList.words(elements));
		}
		Map<SeatId, PointsCard> sent = this.book.cards(performance.id());
		panel.senders()
			.stream()
			.flatMap((seat) -> Stream.ofNullable(sent.get(seat.id()))
				.map((card) -> seat.label() + ": " + PointsWords.of(card.marks(), elements)))
			.forEach(lines::add);
		this.book.deductions(performance.id())
			.filter((list) -> !list.items().isEmpty())
			.ifPresent((list) -> lines.add("Deductions: " + list.inWords()));
		return lines;
	}

	@Override
	public String inWords(PerformanceView performance, CountingPanel panel) {
		List<CalledElement> elements = this.book.list(performance.id()).map(CalledList::elements).orElse(List.of());
		Map<SeatId, PointsCard> sent = this.book.cards(performance.id());
		String cards = panel.seats()
			.stream()
			.map((seat) -> seat.label() + ": "
					+ (panel.isExcused(performance.id(), seat.id()) ? "absent"
							: PointsWords.of(Objects.requireNonNull(sent.get(seat.id())).marks(), elements)))
			.collect(Collectors.joining("\n"));
		return "Elements: " + CalledList.words(elements) + "\n" + cards + "\nDeductions: "
				+ this.book.deductions(performance.id()).map(DeductionList::inWords).orElse("none");
	}

	@Override
	public Map<PerformanceId, ClosedMarks.PointsSheet> closed(SegmentId segment, CountingPanel panel,
			List<PerformanceView> performances, Amendment.@Nullable SupposedChange<?> supposed) {
		PointsSheets.Reading reading = this.sheets.of(segment, panel, performances);
		if (supposed != null) {
			reading.suppose(supposed);
		}
		Map<PerformanceId, ClosedMarks.PointsSheet> closed = new HashMap<>();
		performances.forEach((performance) -> closed.put(performance.id(), reading.sheet(performance.id())));
		return closed;
	}

	@Override
	public List<CardBook.CorrectedCard> corrected(SeatId seat) {
		List<PointsCard> corrected = this.book.corrected(seat);
		if (corrected.isEmpty()) {
			return List.of();
		}
		List<UUID> performances = corrected.stream().map(PointsCard::performance).distinct().toList();
		List<PointsCard> versions = this.book.versions(seat, performances);
		List<CalledElement> elements = this.book.everCalled(performances);
		return corrected.stream().map((card) -> {
			PointsMarks before = JudgesCard.before(card, versions).marks();
			return new CardBook.CorrectedCard(card.getId(), new PerformanceId(card.performance()),
					words(before, card.marks(), elements), words(card.marks(), before, elements));
		}).toList();
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

	/**
	 * What a card of a performance is measured by.
	 *
	 * @param keyed what was keyed in from paper
	 * @param lists every version of the called elements
	 * @param components those that the rules of the segment ask for
	 */
	private record WholeCard(CardKeyings.OfPerformance keyed, CalledLists lists,
			List<SegmentRules.ComponentRule> components) {
	}

}
