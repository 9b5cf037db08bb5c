package rimebook.draw;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class GroupSizesTests {

	@ParameterizedTest
	@CsvSource({ "14, 4, 3 3 4 4", "19, 4, 3 4 4 4 4", "24, 5, 4 5 5 5 5", "24, 6, 6 6 6 6", "6, 6, 6", "7, 6, 3 4",
			"1, 6, 1", "3, 1, 1 1 1" })
	void smallerGroupsComeFirst(int field, int maximum, String expected) {
		List<Integer> sizes = List.of(expected.split(" ")).stream().map(Integer::valueOf).toList();
		assertThat(GroupSizes.of(field, maximum)).isEqualTo(sizes);
	}

	@Test
	void everySplitIsEvenAsSmallAsPossibleAndComplete() {
		for (int field = 1; field <= 130; field++) {
			for (int maximum = 1; maximum <= 20; maximum++) {
				List<Integer> sizes = GroupSizes.of(field, maximum);
				int largest = sizes.get(sizes.size() - 1);
				assertThat(sizes.stream().mapToInt(Integer::intValue).sum()).isEqualTo(field);
				assertThat(sizes).isSorted().allMatch((size) -> size == largest || size == largest - 1);
				assertThat(largest).isLessThanOrEqualTo(maximum);
				assertThat((sizes.size() - 1) * maximum).as("one group fewer would not do").isLessThan(field);
			}
		}
	}

}
