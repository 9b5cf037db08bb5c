package rimebook.live;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class PageRendererTests {

	@Test
	void leavesOutWhatBeginsALineAndEmptyLinesAndNothingElse() {
		assertThat(PageRenderer.withoutMargins("\n\t<p>\n\t\t5.6  and\t5.7 \n \t \n\n</p>\n"))
			.isEqualTo("<p>\n5.6  and\t5.7 \n</p>\n");
	}

}
