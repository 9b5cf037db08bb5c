package rimebook.pages;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;
import org.thymeleaf.spring6.util.DetailedError;

import static org.assertj.core.api.Assertions.assertThat;

class FaultsTests {

	private final StaticMessageSource messages = new StaticMessageSource();

	private final Faults faults = new Faults(this.messages, Locale.ENGLISH);

	@Test
	void followsTheFieldsOfAFormAndOfTheFormsInIt() {
		Sheet sheet = new Sheet("", new Line("", ""), "");
		assertThat(inOrder(sheet, "note", "first.length", "title", "first.name")).containsExactly("title", "first.name",
				"first.length", "note");
	}

	@Test
	void putsWhatConcernsTheWholeFormFirst() {
		DetailedError whole = new DetailedError("stale", new Object[0], "Somebody else was faster.");
		List<DetailedError> both = List.of(errors("title").get(0), whole);
		assertThat(this.faults.inOrder(both, new Sheet("", new Line("", ""), ""))).first().isEqualTo(whole);
	}

	@Test
	void leavesTheErrorsOfAFormThatIsNoRecordAsTheyWereFound() {
		assertThat(inOrder(new Object(), "b", "a")).containsExactly("b", "a");
	}

	@Test
	void leavesTheErrorsOfAnUnreadableFormAsTheyAre() {
		List<DetailedError> errors = errors("b", "a");
		assertThat(this.faults.inOrder(errors, null)).isEqualTo(errors);
	}

	private List<String> inOrder(Object form, String... fields) {
		return this.faults.inOrder(errors(fields), form).stream().map(DetailedError::getFieldName).toList();
	}

	private static List<DetailedError> errors(String... fields) {
		return Arrays.stream(fields).map((field) -> new DetailedError(field, "wrong", new Object[0], "wrong")).toList();
	}

	record Line(String name, String length) {
	}

	record Sheet(String title, Line first, String note) {
	}

}
