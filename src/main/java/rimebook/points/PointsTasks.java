package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.entries.Entries;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.points.ElementCode;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** Lays out what one seat has to give; another seat's marks are never read for it. */
@Component
public class PointsTasks {

	private final PointsBook book;

	private final ControllersWord words;

	private final Entries entries;

	PointsTasks(PointsBook book, ControllersWord words, Entries entries) {
		this.book = book;
		this.words = words;
		this.entries = entries;
	}

	/** What a seat has to give a performance, and what it has given. */
	public PointsTask of(PerformanceView performance, SeatId seat) {
		PointsRules rules = this.book.ruleSet(performance.segment());
		CalledLists lists = this.book.lists(performance.id());
		Optional<PointsCard> card = this.book.card(performance.id(), seat);
		List<CalledElement> toConfirm = lists.toConfirm(card.orElse(null));
		List<PointsTask.Element> elements = lists.newest()
			.map(CalledList::elements)
			.orElse(List.of())
			.stream()
			.map((element) -> element(element, rules, toConfirm.contains(element)))
			.toList();
		List<PointsTask.TakenOut> takenOut = lists.takenOut(card.orElse(null))
			.stream()
			.map((element) -> new PointsTask.TakenOut(element.id(), element.number(), element.code()))
			.toList();
		return new PointsTask(
				new PointsTask.Called(lists.newest().map(CalledList::sequence).orElse(0), elements, takenOut,
						lists.newest().flatMap(this.words::on).isPresent()),
				this.book.rules(performance.segment())
					.components()
					.stream()
					.map(SegmentRules.ComponentRule::name)
					.toList(),
				rules.values().grades().most(), card.map(PointsCard::own).orElse(null));
	}

	private static PointsTask.Element element(CalledElement element, PointsRules rules, boolean confirm) {
		return new PointsTask.Element(element.id(), element.number(),
				new PointsTasks.PointsTask.Element.Coding(element.code(), element.element(),
						rules.nameOf(element.code())),
				element.counts(), element.review(), confirm);
	}

	/** The seat's newest card of each of these performances that has one. */
	public List<OwnPointsCard> cardsOf(SeatId seat, List<PerformanceView> performances) {
		List<UUID> ids = performances.stream().map((performance) -> performance.id().value()).toList();
		Map<UUID, PointsCard> own = this.book.cards(ids, seat);
		Map<UUID, CalledList> lists = this.book.newestLists(own.keySet());
		return performances.stream()
			.flatMap((performance) -> Stream.ofNullable(own.get(performance.id().value()))
				.map((card) -> card(performance, card, lists.get(performance.id().value()))))
			.toList();
	}

	private OwnPointsCard card(PerformanceView performance, PointsCard card, @Nullable CalledList list) {
		List<OwnPointsCard.Graded> graded = (list == null) ? List.of()
				: list.view()
					.counting()
					.stream()
					.map((element) -> new OwnPointsCard.Graded(element.id(), element.number(), element.code(),
							element.element(), card.marks().grade(element)))
					.toList();
		return new OwnPointsCard(performance.id(), performance.startNumber(),
				this.entries.entry(performance.entry()).team().name(), graded, card.own(), !performance.takesCards());
	}

	/**
	 * A seat's own card of a performance judged by points, to be looked up.
	 *
	 * @param elements what counts, in the order skated
	 * @param card the version that counts
	 * @param closed whether it can no longer be changed
	 */
	public record OwnPointsCard(PerformanceId performance, int startNumber, String team, List<Graded> elements,
			PointsTask.OwnCard card, boolean closed) {

		public OwnPointsCard {
			elements = List.copyOf(elements);
		}

		/**
		 * An element with this seat's grade.
		 *
		 * @param element the element itself, as {@link ElementCode#elementOf} says it
		 * @param grade {@code null} where the seat gave none
		 */
		public record Graded(UUID id, int number, String code, String element, @Nullable Integer grade) {
		}

	}

	/**
	 * What a seat has to give the performance on the ice in points judging, and what it
	 * has given.
	 *
	 * @param components the names of the components to mark
	 * @param highestGrade the highest grade of an element; the lowest is its negative
	 * @param card the seat's own card, {@code null} before the first
	 */
	public record PointsTask(Called called, List<String> components, int highestGrade, @Nullable OwnCard card) {

		public PointsTask {
			components = List.copyOf(components);
		}

		/**
		 * A called element.
		 *
		 * @param counts whether it has to be graded
		 * @param review whether the technical panel still looks at it again
		 * @param confirm whether it is another element than when this seat graded it
		 */
		public record Element(UUID id, int number, @JsonUnwrapped Coding coding, boolean counts, boolean review,
				boolean confirm) {

			/** An element as it was called when the seat graded it. */
			public Element(UUID id, int number, String code, String name, boolean counts) {
				this(id, number, new Coding(code, ElementCode.elementOf(code), name), counts, false, false);
			}

			/**
			 * What an element is.
			 *
			 * @param element the element itself, as {@link ElementCode#elementOf} says
			 * it: a grade stands while it stays the same
			 * @param name the code in words
			 */
			public record Coding(String code, String element, String name) {
			}

		}

		/** An element that was taken out, with its number and code when it was graded. */
		public record TakenOut(UUID id, int number, String code) {
		}

		/** The seat's own newest card. */
		public record OwnCard(int sequence, PointsMarks marks, Instant receivedAt) {
		}

		/**
		 * What the technical panel called, as far as the seat has to know.
		 *
		 * @param listSequence the version of the list of called elements, 0 before the
		 * first
		 * @param elements in the order skated
		 * @param takenOut what this seat has graded and is not called any more, until it
		 * is confirmed
		 * @param authorised whether the technical controller has authorised the list
		 */
		public record Called(int listSequence, List<Element> elements, List<TakenOut> takenOut, boolean authorised) {

			public Called {
				elements = List.copyOf(elements);
				takenOut = List.copyOf(takenOut);
			}

		}

	}

}
