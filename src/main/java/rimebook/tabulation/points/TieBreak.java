package rimebook.tabulation.points;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;

/** What parts teams with equal totals in a segment. */
public enum TieBreak {

	/** The higher total of the elements: usual in a short programme. */
	ELEMENTS(Criterion.ELEMENT_POINTS),

	/** The higher total of the factored components: usual in a free skating. */
	COMPONENTS(Criterion.COMPONENT_POINTS),

	/** Nothing: equal totals share the place. */
	NONE(null);

	private final Optional<Criterion> criterion;

	TieBreak(@Nullable Criterion criterion) {
		this.criterion = Optional.ofNullable(criterion);
	}

	Optional<Criterion> criterion() {
		return this.criterion;
	}

}
