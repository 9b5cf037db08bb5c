package rimebook.pages;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.context.support.StaticMessageSource;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.validation.ObjectError;

import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class SubmissionTests {

	private final StaticMessageSource messages = new StaticMessageSource();

	private final BindingResult form = new BeanPropertyBindingResult(new Sheet(), "form");

	SubmissionTests() {
		this.messages.addMessage("web.form.fault", Locale.ENGLISH, "{0} {1}");
	}

	@Test
	void callsAFieldWhatThePageCallsIt() {
		this.messages.addMessage("field.title", Locale.ENGLISH, "“Heading”");
		refuse(RuleViolationException.ofField("field-missing", "title",
				Sentence.said("is empty; please don't leave it so.")));
		assertThat(this.form.getFieldError("title")).isNotNull();
		assertThat(words()).isEqualTo("“Heading” is empty; please don't leave it so.");
	}

	@Test
	void keepsTheNameOfAFieldThatThePageHasNoWordFor() {
		refuse(RuleViolationException.ofField("dear", "lantern", Sentence.said("costs $1 {0}.")));
		assertThat(this.form.getGlobalError()).isNotNull();
		assertThat(words()).isEqualTo("The field 'lantern' costs $1 {0}.");
	}

	@Test
	void leavesAnyOtherSentenceAsItIs() {
		refuse(new ConflictException("nobody", "title", Sentence.said("Nobody's on the ice.")));
		assertThat(this.form.getFieldError("title")).isNotNull();
		assertThat(words()).isEqualTo("Nobody's on the ice.");
	}

	@Test
	void speaksTheLanguageOfTheRequest() {
		LocaleContextHolder.setLocale(Locale.FRENCH);
		try {
			refuse(new ConflictException("nobody", "title", Sentence.of("figure.others", 3)));
		}
		finally {
			LocaleContextHolder.resetLocaleContext();
		}
		assertThat(words()).isEqualTo("3 autres");
	}

	private void refuse(RimebookException refusal) {
		assertThat(Submission.refused(this.form, () -> {
			throw refusal;
		})).isTrue();
	}

	private String words() {
		ObjectError error = this.form.getAllErrors().get(0);
		return this.messages.getMessage(error, Locale.ENGLISH);
	}

	static class Sheet {

		public String getTitle() {
			return "";
		}

	}

}
