package rimebook.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What every judge gave one thing that is judged.
 *
 * @param team whose it is
 * @param item which thing of that team, such as an element; empty where there is one only
 * @param given in hundredths, one a judge in panel order; {@code null} inside where a
 * judge gave nothing
 */
record MarkLine(Team team, String item, List<@Nullable Integer> given) {

	MarkLine {
		given = Collections.unmodifiableList(new ArrayList<>(given));
	}

	/**
	 * What a judge gave beside what the others gave; empty where one of these is missing.
	 * The average is over the other judges only, all of them: none of their marks is
	 * dropped.
	 * @param judge which one in panel order, from 0
	 */
	Optional<Compared> of(int judge) {
		Integer own = this.given.get(judge);
		List<Integer> others = IntStream.range(0, this.given.size())
			.filter((other) -> other != judge)
			.mapToObj(this.given::get)
			.filter(Objects::nonNull)
			.toList();
		if (own == null || others.isEmpty()) {
			return Optional.empty();
		}
		int sum = others.stream().mapToInt(Integer::intValue).sum();
		return Optional.of(new Compared(this, own, new BigFraction(sum, others.size()), Collections.min(others),
				Collections.max(others), others.size()));
	}

	/**
	 * A team as its row of the standing names it.
	 *
	 * @param entry the entry's identity
	 */
	record Team(String entry, int startNumber, String name) {
	}

}
