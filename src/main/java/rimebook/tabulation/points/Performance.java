package rimebook.tabulation.points;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.TabulationException;

/**
 * What tabulation needs to know of one team in one segment.
 *
 * @param entry identifier, unique in the segment; also decides the order in which teams
 * sharing a place are listed
 * @param status how the team came through: one that skated must have marks, a
 * disqualified one may, all others have none
 * @param elements in any order, kept by number
 * @param components in any order
 * @param deductions in the order noted
 */
public record Performance(String entry, EntryStatus status, List<JudgedElement> elements,
		List<JudgedComponent> components, List<DeductionRule.Deduction> deductions) {

	/** The most judges a panel may have. */
	static final int MOST_JUDGES = 99;

	/** The most deductions one performance may have. */
	static final int MOST_DEDUCTIONS = 100;

	/**
	 * Check the performance by itself.
	 * @throws TabulationException {@code entry-missing}, {@code no-marks},
	 * {@code marks-without-performance}, {@code duplicate-element},
	 * {@code duplicate-component}, {@code uneven-panel}, {@code panel-out-of-range} (more
	 * than 99 judges) or {@code too-many-deductions}
	 */
	public Performance {
		elements = elements.stream().sorted(Comparator.comparing(JudgedElement::number)).toList();
		components = List.copyOf(components);
		deductions = List.copyOf(deductions);
		if (entry.isBlank()) {
			throw Refusal.blankEntry();
		}
		checkStatus(entry, status, !elements.isEmpty() || !components.isEmpty() || !deductions.isEmpty());
		Refusal.repeated(elements.stream().map(JudgedElement::number)).ifPresent((number) -> {
			throw Refusal.duplicateElement(entry, number);
		});
		Refusal.repeated(components.stream().map(JudgedComponent::name)).ifPresent((name) -> {
			throw Refusal.duplicateComponent(name);
		});
		checkPanel(entry, panelSizes(elements, components));
		if (deductions.size() > MOST_DEDUCTIONS) {
			throw Refusal.tooManyDeductions(entry, MOST_DEDUCTIONS);
		}
	}

	/**
	 * Return a team that skated.
	 * @param entry identifier
	 * @param elements in any order
	 * @param components in any order
	 * @param deductions in the order noted
	 * @return the performance
	 */
	public static Performance skated(String entry, List<JudgedElement> elements, List<JudgedComponent> components,
			List<DeductionRule.Deduction> deductions) {
		return new Performance(entry, EntryStatus.SKATED, elements, components, deductions);
	}

	/**
	 * Return a team without marks.
	 * @param entry identifier
	 * @param status why it has none
	 * @return the performance
	 */
	public static Performance without(String entry, EntryStatus status) {
		return new Performance(entry, status, List.of(), List.of(), List.of());
	}

	private static void checkPanel(String entry, Set<Integer> sizes) {
		if (sizes.size() > 1) {
			throw Refusal.unevenPanel(entry);
		}
		for (int judges : sizes) {
			if (judges > MOST_JUDGES) {
				throw TabulationException.panelOutOfRange(judges);
			}
		}
	}

	private static void checkStatus(String entry, EntryStatus status, boolean marked) {
		if (status == EntryStatus.SKATED && !marked) {
			throw Refusal.noMarks(entry);
		}
		if (marked && status != EntryStatus.SKATED && status != EntryStatus.DISQUALIFIED) {
			throw Refusal.marksWithoutPerformance(entry);
		}
	}

	/**
	 * Return how many seats the lines have; an element that does not count may have none.
	 */
	private static Set<Integer> panelSizes(List<JudgedElement> elements, List<JudgedComponent> components) {
		Set<Integer> sizes = new TreeSet<>();
		Stream
			.concat(elements.stream().map((element) -> element.grades().size()),
					components.stream().map((component) -> component.marks().size()))
			.filter((size) -> size > 0)
			.forEach(sizes::add);
		return sizes;
	}

	int judges() {
		return panelSizes(this.elements, this.components).stream().findFirst().orElse(0);
	}

	boolean isMarked() {
		return judges() > 0;
	}

	/**
	 * A team that skated needs a score; one removed later has one where it was marked.
	 */
	boolean isScored() {
		return isMarked() || this.status == EntryStatus.SKATED;
	}

}
