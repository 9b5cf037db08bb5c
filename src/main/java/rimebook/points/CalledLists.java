package rimebook.points;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Every version of the elements called for one performance.
 *
 * @param versions oldest first
 */
record CalledLists(List<CalledList> versions) {

	Optional<CalledList> newest() {
		return this.versions.isEmpty() ? Optional.empty() : Optional.of(this.versions.get(this.versions.size() - 1));
	}

	/** The identities of all elements called so far, those taken out among them. */
	Set<UUID> everCalled() {
		return this.versions.stream()
			.flatMap((list) -> list.elements().stream())
			.map(CalledElement::id)
			.collect(Collectors.toSet());
	}

	/**
	 * The list that a card was given to.
	 * @throws RuleViolationException {@code list-unknown}
	 */
	Optional<CalledList> givenTo(PointsSubmission.SubmitPointsCard card) {
		Integer sequence = card.listSequence();
		if (sequence == null) {
			return newest();
		}
		return Optional
			.of(version(sequence).orElseThrow(() -> RuleViolationException.ofField("list-unknown", "listSequence",
					Sentence.of("points.list-unknown", sequence, newest().map(CalledList::sequence).orElse(0)))));
	}

	/** The version of that number; empty where there is none. */
	Optional<CalledList> version(int sequence) {
		return this.versions.stream().filter((list) -> list.sequence() == sequence).findFirst();
	}

	/**
	 * The elements that are another element now than when a card graded them; its grades
	 * stay, but the judge has to confirm them. A changed level, part or downgrade, a
	 * review and another place in the order ask nobody: the judge has graded the very
	 * element.
	 */
	List<CalledElement> toConfirm(@Nullable PointsCard card) {
		return graded(card)
			.map((before) -> newest().orElseThrow()
				.view()
				.counting()
				.stream()
				.filter((element) -> before.element(element.id()).filter(element::isSameElementAs).isEmpty())
				.filter((element) -> gradeOf(card, element) != null)
				.toList())
			.orElse(List.of());
	}

	/**
	 * The elements that a card graded and that were taken out of the list since, as they
	 * were called; its judge has to confirm that, since the grades after them may have
	 * been meant for other elements.
	 */
	List<CalledElement> takenOut(@Nullable PointsCard card) {
		return graded(card)
			.map((before) -> before.elements()
				.stream()
				.filter((element) -> newest().orElseThrow().view().element(element.id()).isEmpty())
				.filter((element) -> gradeOf(card, element) != null)
				.toList())
			.orElse(List.of());
	}

	/** Tell whether a card was given to the elements that are called now. */
	boolean isConfirmed(PointsCard card) {
		return toConfirm(card).isEmpty() && takenOut(card).isEmpty();
	}

	private Optional<CalledListView> graded(@Nullable PointsCard card) {
		return Optional.ofNullable(card).flatMap((sent) -> version(sent.listSequence())).map(CalledList::view);
	}

	private static @Nullable Integer gradeOf(@Nullable PointsCard card, CalledElement element) {
		return (card != null) ? card.marks().grade(element) : null;
	}

}
