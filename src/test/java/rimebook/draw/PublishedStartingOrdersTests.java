package rimebook.draw;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Eleven free skates of 1998: how the groups were cut, and that each is a block of
 * consecutive placings. Which order the lots gave inside a group cannot be repeated; that
 * the order is one our draw could give can.
 */
class PublishedStartingOrdersTests {

	@ParameterizedTest(name = "{0}")
	@CsvFileSource(resources = "/draw/1998-free-skates.csv")
	void ourGroupsAreThePublishedOnes(String event, int maximum, String sizes, String order) {
		List<Integer> places = numbers(order);
		int drawn = places.stream().mapToInt(Integer::intValue).max().orElseThrow();
		List<List<Integer>> ours = startersOf(
				Drawing.of(DrawMethod.GROUPS_FROM_STANDING, Lots.field(event, drawn), maximum), places);
		List<List<Integer>> published = cut(places, numbers(sizes));
		assertThat(ours.stream().map(List::size).toList()).isEqualTo(numbers(sizes));
		assertThat(sorted(ours)).isEqualTo(sorted(published));
	}

	@ParameterizedTest(name = "{0}")
	@CsvFileSource(resources = "/draw/1998-free-skates.csv")
	void publishedGroupsAreBlocksOfConsecutivePlacingsWorstFirst(String event, int maximum, String sizes,
			String order) {
		List<Integer> places = numbers(order);
		List<Integer> descending = cut(places, numbers(sizes)).stream()
			.flatMap((group) -> group.stream().sorted((a, b) -> b - a))
			.toList();
		assertThat(descending).isEqualTo(places.stream().sorted((a, b) -> b - a).toList());
		assertThat(maximum).isGreaterThanOrEqualTo(numbers(sizes).stream().mapToInt(Integer::intValue).max().orElse(0));
	}

	/** Who withdrew after the draw is missing from the published order. */
	private static List<List<Integer>> startersOf(List<List<Lot>> groups, List<Integer> started) {
		return Lots.numbers(groups).stream().map((group) -> group.stream().filter(started::contains).toList()).toList();
	}

	private static List<List<Integer>> cut(List<Integer> order, List<Integer> sizes) {
		return IntStream.range(0, sizes.size()).mapToObj((group) -> {
			int from = sizes.subList(0, group).stream().mapToInt(Integer::intValue).sum();
			return order.subList(from, from + sizes.get(group));
		}).toList();
	}

	private static List<List<Integer>> sorted(List<List<Integer>> groups) {
		return groups.stream().map((group) -> group.stream().sorted().toList()).toList();
	}

	private static List<Integer> numbers(String text) {
		return Arrays.stream(text.split(" ")).map(Integer::valueOf).collect(Collectors.toList());
	}

}
