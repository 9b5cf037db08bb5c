package rimebook.archive;

import java.util.Set;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class OpenTextTests {

	private static final Set<String> HIDDEN = Set.of("officials", "panel.notes");

	@Test
	void takesOutWhoSatThereAndWhyThatChanged() {
		String text = "{\"rows\":[1,null],\"panel\":{\"judges\":[1,3],\"notes\":[\"Judge 2 is ill\"]},"
				+ "\"officials\":[{\"name\":\"Signe Moss\"}]}";
		assertThat(OpenText.of(text, HIDDEN))
			.isEqualTo("{\"rows\":[1,null],\"panel\":{\"judges\":[1,3],\"notes\":[]}}");
	}

	@Test
	void leavesEveryByteWhereThereIsNothingToTakeOut() {
		String text = "{ \"rows\": [ 1.50 ], \"panel\":{\"notes\":[]} }";
		assertThat(OpenText.of(text, HIDDEN)).isSameAs(text);
	}

}
