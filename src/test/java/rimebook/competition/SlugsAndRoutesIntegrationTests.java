package rimebook.competition;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** No competition, event or segment gets an address that is a page already. */
@WholeApplication
class SlugsAndRoutesIntegrationTests {

	/** A word where another address has a slug, and what may follow it. */
	private static final Pattern WORD = Pattern
		.compile("/follow(?:/\\{competition}(?:/\\{event})?)?/([a-z0-9-]+)(?:/.*)?");

	@Autowired
	@Qualifier("requestMappingHandlerMapping")
	private RequestMappingHandlerMapping routes;

	@Test
	void everyWordOfAPublicAddressIsTaken() {
		Set<String> words = new TreeSet<>();
		this.routes.getHandlerMethods().keySet().forEach((route) -> route.getPatternValues().forEach((pattern) -> {
			Matcher matcher = WORD.matcher(pattern);
			if (matcher.matches()) {
				words.add(matcher.group(1));
			}
		}));
		assertThat(words).contains("timetable", "find", "why", "board");
		assertThat(Slug.TAKEN).containsAll(words);
	}

	@Test
	void whoIsNamedLikeAPageGetsAnotherAddress() {
		assertThat(Slug.TAKEN).allSatisfy((word) -> {
			assertThat(Slug.of(word, "event")).isEqualTo(word + "-event");
			assertThat(Slug.unique(word, "segment", (taken) -> false)).isEqualTo(word + "-segment");
			assertThat(Slug.TAKEN).doesNotContain(Slug.of(word, "event"));
		});
		assertThat(Slug.of("Timetable", "event")).isEqualTo("timetable-event");
		assertThat(Slug.of("Words and more", "event")).isEqualTo("words-and-more");
	}

}
