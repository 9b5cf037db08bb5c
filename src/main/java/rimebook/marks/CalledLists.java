package rimebook.marks;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

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
	 * @throws rimebook.shared.RuleViolationException {@code list-unknown}
	 */
	Optional<CalledList> givenTo(SubmitPointsCard card) {
		Integer sequence = card.listSequence();
		if (sequence == null) {
			return newest();
		}
		return Optional.of(version(sequence)
			.orElseThrow(() -> CardRefusals.listUnknown(sequence, newest().map(CalledList::sequence).orElse(0))));
	}

	/** The version of that number; empty where there is none. */
	Optional<CalledList> version(int sequence) {
		return this.versions.stream().filter((list) -> list.sequence() == sequence).findFirst();
	}

	/**
	 * The elements that are called otherwise now than when a card graded them; its grades
	 * stay, but the judge has to confirm them.
	 */
	List<CalledElement> toConfirm(@Nullable PointsCard card) {
		Optional<CalledList> before = (card != null) ? version(card.listSequence()) : Optional.empty();
		if (before.isEmpty()) {
			return List.of();
		}
		CalledListView graded = before.get().view();
		return newest().orElseThrow()
			.view()
			.counting()
			.stream()
			.filter((element) -> card.marks().grade(element) != null)
			.filter((element) -> graded.element(element.id())
				.filter((old) -> old.code().equals(element.code()))
				.isEmpty())
			.toList();
	}

}
