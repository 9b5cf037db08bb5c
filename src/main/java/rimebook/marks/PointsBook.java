package rimebook.marks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.tabulation.points.ComponentRule;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** What was sent for performances judged by points: of everything the newest counts. */
@Component
class PointsBook implements CardBook {

	private final CalledListRepository lists;

	private final PointsCardRepository cards;

	private final DeductionListRepository deductions;

	private final ListAuthorisationRepository authorisations;

	private final DeductionsSeenRepository deductionsSeen;

	private final CountingPanels panels;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final PaperKeyings keyings;

	PointsBook(CalledListRepository lists, PointsCardRepository cards, DeductionListRepository deductions,
			ListAuthorisationRepository authorisations, DeductionsSeenRepository deductionsSeen, CountingPanels panels,
			Competitions competitions, RuleSets ruleSets, PaperKeyings keyings) {
		this.lists = lists;
		this.cards = cards;
		this.deductions = deductions;
		this.authorisations = authorisations;
		this.deductionsSeen = deductionsSeen;
		this.panels = panels;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.keyings = keyings;
	}

	/**
	 * The rules of a segment.
	 * @throws rimebook.shared.NotFoundException if its event is not judged by points
	 */
	SegmentRules rules(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		return this.ruleSets.of(event, event.segment(segment));
	}

	/** The whole rule set; errors as for {@link #rules}. */
	PointsRules ruleSet(SegmentId segment) {
		return this.ruleSets.of(this.competitions.eventOf(segment));
	}

	/** The counting seats of the segment in the order of the judges' numbers. */
	List<SeatView> seats(SegmentId segment) {
		return this.panels.of(segment).seats();
	}

	/** Every seat whose cards are taken, counting or not. */
	List<SeatView> senders(SegmentId segment) {
		return this.panels.of(segment).senders();
	}

	CountingPanel panel(SegmentId segment) {
		return this.panels.of(segment);
	}

	Optional<CalledList> list(PerformanceId performance) {
		return lists(performance).newest();
	}

	CalledLists lists(PerformanceId performance) {
		return new CalledLists(this.lists.findByPerformanceInOrderBySequence(List.of(performance.value())));
	}

	/** The controller's word for a version of the list, if it was given. */
	Optional<AuthorisedListView> authorisation(CalledList list) {
		return this.authorisations.findByPerformanceAndSequence(list.performance(), list.sequence())
			.map((word) -> word.view(deductionsSeen(new PerformanceId(list.performance())).orElse(Integer.MAX_VALUE)));
	}

	/**
	 * The newest version of the deductions that a controller has seen; empty where nobody
	 * was asked yet.
	 */
	Optional<Integer> deductionsSeen(PerformanceId performance) {
		return this.deductionsSeen.findByPerformance(performance.value())
			.stream()
			.map(DeductionsSeen::sequence)
			.max(Integer::compare);
	}

	/** A version of the deductions; empty where there is none of that number. */
	Optional<DeductionList> deductionVersion(PerformanceId performance, int sequence) {
		return this.deductions.findByPerformanceInOrderBySequence(List.of(performance.value()))
			.stream()
			.filter((list) -> list.sequence() == sequence)
			.findFirst();
	}

	Optional<DeductionList> deductions(PerformanceId performance) {
		return newestDeductions(List.of(performance.value())).values().stream().findFirst();
	}

	Map<SeatId, PointsCard> cards(PerformanceId performance) {
		return newestCards(List.of(performance.value())).getOrDefault(performance.value(), Map.of());
	}

	/** The newest card of one seat; no other seat's is read. */
	Optional<PointsCard> card(PerformanceId performance, SeatId seat) {
		return this.cards.findByPerformanceAndSeatOrderBySequence(performance.value(), seat.value())
			.stream()
			.reduce((older, newer) -> newer);
	}

	/** The newest card of one seat for each of these; no other seat's is read. */
	Map<UUID, PointsCard> cards(Collection<UUID> performances, SeatId seat) {
		Map<UUID, PointsCard> newest = new HashMap<>();
		this.cards.findBySeatAndPerformanceInOrderBySequence(seat.value(), performances)
			.forEach((card) -> newest.put(card.performance(), card));
		return newest;
	}

	Map<UUID, CalledList> newestLists(Collection<UUID> performances) {
		Map<UUID, CalledList> newest = new HashMap<>();
		this.lists.findByPerformanceInOrderBySequence(performances)
			.forEach((list) -> newest.put(list.performance(), list));
		return newest;
	}

	Map<UUID, DeductionList> newestDeductions(Collection<UUID> performances) {
		Map<UUID, DeductionList> newest = new HashMap<>();
		this.deductions.findByPerformanceInOrderBySequence(performances)
			.forEach((list) -> newest.put(list.performance(), list));
		return newest;
	}

	Map<UUID, Map<SeatId, PointsCard>> newestCards(Collection<UUID> performances) {
		Map<UUID, Map<SeatId, PointsCard>> newest = new HashMap<>();
		this.cards.findByPerformanceInOrderBySequence(performances)
			.forEach((card) -> newest.computeIfAbsent(card.performance(), (id) -> new LinkedHashMap<>())
				.put(card.seat(), card));
		return newest;
	}

	@Override
	public boolean anySentFor(PerformanceId performance) {
		return this.lists.existsByPerformance(performance.value())
				|| this.cards.existsByPerformance(performance.value())
				|| this.deductions.existsByPerformance(performance.value()) || this.keyings.any(performance);
	}

	@Override
	public Map<SeatId, SentCard> sentFor(Performance performance) {
		Map<SeatId, SentCard> sent = new LinkedHashMap<>();
		cards(performance.id()).forEach((seat, card) -> sent.put(seat,
				new SentCard(words(card.marks()), card.sequence(), card.acknowledged().receivedAt())));
		return sent;
	}

	private static String words(PointsMarks marks) {
		return marks.grades().size() + ((marks.grades().size() == 1) ? " grade" : " grades");
	}

	@Override
	public List<String> missing(Performance performance) {
		return missing(performance, seats(performance.segment()));
	}

	@Override
	public List<String> missingWithout(Performance performance, List<SeatView> absent) {
		return missing(performance,
				seats(performance.segment()).stream().filter((seat) -> !absent.contains(seat)).toList());
	}

	@Override
	public List<String> missing(Performance performance, SeatView seat) {
		return missing(seat, cards(performance.id()).get(seat.id()), this.keyings.of(performance.id()),
				lists(performance.id()), rules(performance.segment()).components());
	}

	private List<String> missing(Performance performance, List<SeatView> seats) {
		CalledLists lists = lists(performance.id());
		Optional<CalledList> list = lists.newest().filter((called) -> !called.elements().isEmpty());
		List<String> missing = new ArrayList<>();
		if (list.isEmpty()) {
			missing.add("the called elements");
		}
		Map<SeatId, PointsCard> sent = cards(performance.id());
		List<ComponentRule> components = rules(performance.segment()).components();
		PaperKeyings.OfPerformance keyed = this.keyings.of(performance.id());
		for (SeatView seat : seats) {
			missing.addAll(missing(seat, sent.get(seat.id()), keyed, lists, components));
		}
		list.ifPresent((called) -> missing.addAll(unsettled(called)));
		return missing;
	}

	private static List<String> missing(SeatView seat, @Nullable PointsCard card, PaperKeyings.OfPerformance keyed,
			CalledLists lists, List<ComponentRule> components) {
		PaperState paper = keyed.state(seat.id(), (card != null) ? card.held(lists) : null);
		if (paper.isUnsettled()) {
			return List.of(seat.label() + paper.inBrackets());
		}
		Optional<CalledListView> list = lists.newest().map(CalledList::view);
		List<String> missing = new ArrayList<>();
		lack(card, list, components).ifPresent((lack) -> missing.add(seat.label() + lack));
		lists.toConfirm(card)
			.forEach((element) -> missing
				.add(seat.label() + ": confirm element " + element.number() + ", now " + element.code()));
		lists.takenOut(card)
			.forEach((element) -> missing.add(seat.label() + ": confirm that " + element.label() + " was taken out"));
		return missing;
	}

	/** What keeps the list from counting: open reviews, else the controller's word. */
	private List<String> unsettled(CalledList list) {
		List<String> reviews = list.elements()
			.stream()
			.filter(CalledElement::review)
			.map((element) -> "the review of " + element.label())
			.toList();
		if (!reviews.isEmpty()) {
			return reviews;
		}
		return list.isCorrected() || authorisation(list).isPresent() ? List.of()
				: List.of("the technical controller's authorisation");
	}

	/** What a seat's card lacks, with a leading blank; empty text for the whole card. */
	private static Optional<String> lack(@Nullable PointsCard card, Optional<CalledListView> list,
			List<ComponentRule> components) {
		if (card == null) {
			return Optional.of("");
		}
		List<String> lacks = new ArrayList<>();
		list.map(CalledListView::counting)
			.orElse(List.of())
			.stream()
			.filter((element) -> card.marks().grade(element) == null)
			.forEach((element) -> lacks.add("element " + element.number()));
		components.stream()
			.filter((component) -> card.marks().component(component.name()) == null)
			.forEach((component) -> lacks.add(component.name()));
		return lacks.isEmpty() ? Optional.empty() : Optional.of(" (" + String.join(", ", lacks) + ")");
	}

	@Override
	public List<String> soFar(Performance performance) {
		List<CalledElement> elements = list(performance.id()).map(CalledList::elements).orElse(List.of());
		List<String> lines = new ArrayList<>();
		if (!elements.isEmpty()) {
			lines.add("Elements: " + CalledList.words(elements));
		}
		Map<SeatId, PointsCard> sent = cards(performance.id());
		senders(performance.segment()).stream()
			.filter((seat) -> sent.containsKey(seat.id()))
			.forEach((seat) -> lines.add(seat.label() + ": " + PointsWords.of(sent.get(seat.id()).marks(), elements)));
		deductions(performance.id()).filter((list) -> !list.items().isEmpty())
			.ifPresent((list) -> lines.add("Deductions: " + list.inWords()));
		return lines;
	}

	@Override
	public String inWords(Performance performance) {
		List<CalledElement> elements = list(performance.id()).map(CalledList::elements).orElse(List.of());
		Map<SeatId, PointsCard> sent = cards(performance.id());
		CountingPanel panel = panel(performance.segment());
		String cards = panel.seats()
			.stream()
			.map((seat) -> seat.label() + ": "
					+ (panel.isExcused(performance.id(), seat.id()) ? "absent"
							: PointsWords.of(Objects.requireNonNull(sent.get(seat.id())).marks(), elements)))
			.collect(Collectors.joining("\n"));
		return "Elements: " + CalledList.words(elements) + "\n" + cards + "\nDeductions: "
				+ deductions(performance.id()).map(DeductionList::inWords).orElse("none");
	}

}
