package rimebook.web;

import java.util.Locale;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.format.support.DefaultFormattingConversionService;
import org.springframework.format.support.FormattingConversionService;

import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

/** A page that converts a sentence says it in the language of the request. */
class SpokenSentencesTests {

	private final FormattingConversionService conversion = new DefaultFormattingConversionService();

	SpokenSentencesTests() {
		new WebConfiguration(new StaticListableBeanFactory().getBeanProvider(FormAnswers.class), mock(CrewCookie.class))
			.addFormatters(this.conversion);
	}

	@AfterEach
	void forgetTheLanguage() {
		LocaleContextHolder.resetLocaleContext();
	}

	@Test
	void saysASentenceInEachLanguage() {
		assertThat(said(Locale.ENGLISH, Sentence.of("figure.others", 3))).isEqualTo("3 others");
		assertThat(said(Locale.FRENCH, Sentence.of("figure.others", 3))).isEqualTo("3 autres");
	}

	@Test
	void saysInEnglishWhatHasNoOtherWords() {
		assertThat(said(Locale.FRENCH, Sentence.of("web.not-allowed"))).isEqualTo("Your role does not include this.");
	}

	private String said(Locale language, Sentence sentence) {
		LocaleContextHolder.setLocale(language);
		return String.valueOf(this.conversion.convert(sentence, String.class));
	}

}
