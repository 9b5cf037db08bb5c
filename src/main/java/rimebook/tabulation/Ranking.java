package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/**
 * Gives places: best figures first, equal figures share the place and the following
 * places are not awarded ({@code 1, 2, 2, 4}). For the judging methods of this module.
 */
public final class Ranking {

	private Ranking() {
	}

	/**
	 * Rank all contenders, then take those out who may not keep a place.
	 * @param contenders in any order, each with another identifier
	 * @param removed identifiers whose place stays empty
	 * @return the others in order of place, within a place by identifier
	 */
	public static List<Rank> of(Collection<Contender> contenders, Set<String> removed) {
		List<Level> levels = levels(contenders, removed);
		List<Rank> ranks = new ArrayList<>();
		for (int i = 0; i < levels.size(); i++) {
			Level better = (i > 0) ? levels.get(i - 1) : null;
			Level worse = (i + 1 < levels.size()) ? levels.get(i + 1) : null;
			ranks.addAll(levels.get(i).ranks(better, worse));
		}
		return ranks;
	}

	private static List<Level> levels(Collection<Contender> contenders, Set<String> removed) {
		List<Level> levels = new ArrayList<>();
		int before = 0;
		for (Contender contender : contenders.stream().sorted(Contender.ORDER).toList()) {
			Level last = levels.isEmpty() ? null : levels.get(levels.size() - 1);
			if (last == null || !last.members().get(0).isLevelWith(contender)) {
				last = new Level(before + 1, new ArrayList<>());
				levels.add(last);
			}
			last.members().add(contender);
			before++;
		}
		return levels.stream().flatMap((level) -> level.without(removed)).toList();
	}

	/**
	 * A team's place and the reason for it.
	 *
	 * @param place from 1
	 * @param entry identifier
	 * @param reason what parted it from its neighbours
	 */
	public record Rank(int place, String entry, Reason reason) {

		/**
		 * Return the rank of a team, whichever it is.
		 * @return place and reason
		 */
		public Placing placing() {
			return new Placing(this.place, this.reason);
		}

	}

	/** The teams on one place. */
	private record Level(int place, List<Contender> members) {

		Stream<Level> without(Set<String> removed) {
			List<Contender> kept = this.members.stream().filter((member) -> !removed.contains(member.entry())).toList();
			return kept.isEmpty() ? Stream.empty() : Stream.of(new Level(this.place, kept));
		}

		/** Level teams differ from their neighbours in the same way. */
		List<Rank> ranks(@Nullable Level better, @Nullable Level worse) {
			Contender one = this.members.get(0);
			Reason.Comparison above = compare(one, better);
			Reason.Comparison below = compare(one, worse);
			List<String> entries = entries();
			return IntStream.range(0, entries.size())
				.mapToObj((i) -> new Rank(this.place, entries.get(i),
						new Reason(new OthersOnPlace(entries, i), above, below)))
				.toList();
		}

		private List<String> entries() {
			return this.members.stream().map(Contender::entry).toList();
		}

		private static Reason.@Nullable Comparison compare(Contender own, @Nullable Level other) {
			if (other == null) {
				return null;
			}
			Contender rival = other.members.get(0);
			int decisive = own.firstDifference(rival);
			Figures.Measure measure = own.measures().get(decisive);
			return new Reason.Comparison(other.entries(), other.place, measure.criterion(), measure.value(),
					rival.measures().get(decisive).value());
		}

	}

	/**
	 * A team and its measures in the order in which they are compared; for the judging
	 * methods of this module.
	 *
	 * @param entry identifier
	 * @param measures over the same criteria as every team's it is compared with, up to
	 * their first difference
	 */
	public record Contender(String entry, List<Figures.Measure> measures) {

		/**
		 * Better figures first; equal ones by identifier, whatever order they came in.
		 */
		static final Comparator<Contender> ORDER = Comparator.comparing(Contender::sortingKey, Contender::compare)
			.thenComparing(Contender::entry);

		private List<Figures.Measure> sortingKey() {
			return this.measures;
		}

		static int compare(List<Figures.Measure> left, List<Figures.Measure> right) {
			return firstDifference(left, right).map((i) -> left.get(i).compareTo(right.get(i))).orElse(0);
		}

		boolean isLevelWith(Contender other) {
			return this.measures.equals(other.measures);
		}

		/** Return where the first difference lies; there must be one. */
		int firstDifference(Contender other) {
			return firstDifference(this.measures, other.measures).orElseThrow();
		}

		/** Both lists run over the same criteria up to their first difference. */
		private static Optional<Integer> firstDifference(List<Figures.Measure> left, List<Figures.Measure> right) {
			for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
				if (!left.get(i).equals(right.get(i))) {
					return Optional.of(i);
				}
			}
			return Optional.empty();
		}

	}

}
