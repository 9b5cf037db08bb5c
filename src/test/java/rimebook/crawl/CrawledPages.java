package rimebook.crawl;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import static org.assertj.core.api.Assertions.assertThat;

/** The addresses that can be read, as the service itself lists them. */
final class CrawledPages {

	/** Never ends, so it has tests of its own. */
	private static final Set<String> STREAMS = Set.of("/follow/{competition}/signals");

	/**
	 * Shows what went wrong with another page, not one of its own; or is shut for
	 * everybody.
	 */
	private static final Set<String> NOT_PAGES = Set.of("/error", "/actuator", "/springdoc");

	/**
	 * What a variable is where its name does not say it, and what a page has to be asked.
	 */
	private static final Map<String, String> NAMED = Map.of("/desk/competitions/{competition}/state",
			"/desk/competitions/{competition}/state?next={next}", "/desk/officials/{id}", "/desk/officials/{official}",
			"/desk/people/{id}", "/desk/people/{person}", "/desk/people/{id}/password",
			"/desk/people/{person}/password", "/problems/{code}", "/problems/stale-version", "/set-up/{token}",
			"/set-up/no-such-token", "/desk/documents/{kind}/{subject}/{version}/sheet.pdf",
			"/desk/documents/{sheet}/0/sheet.pdf", "/follow/paper/{kind}/{subject}/{version}/{printed}",
			"/follow/paper/{sheet}/0/00000000000000000000000000000000", "/desk/documents/event/{event}/all.pdf",
			"/desk/documents/event/{bound}/all.pdf", "/desk/documents/{kind}/{subject}/{version}/compare/{printed}",
			"/desk/documents/{sheet}/0/compare/00000000000000000000000000000000");

	/** Further looks of a page that are behind a question mark. */
	private static final Map<String, List<String>> LOOKS = Map.of("/desk/stand/{segment}",
			List.of("?end={performance}", "?open=absent", "?open=reopen", "?open=call"), "/desk/keying/{segment}",
			List.of("?performance={performance}"), "/desk/rulings", List.of("?competition={competition}"),
			"/desk/keying/{segment}/cards/{address}", List.of("?performance={performance}"));

	private CrawledPages() {
	}

	/** One pattern for each page; what a variable stands for is said by a place. */
	static List<String> patterns(List<RequestMappingInfoHandlerMapping> mappings) {
		Set<String> patterns = new TreeSet<>();
		mappings.forEach((mapping) -> mapping.getHandlerMethods()
			.keySet()
			.stream()
			.filter(CrawledPages::isRead)
			.forEach((info) -> patterns.addAll(info.getPatternValues())));
		patterns.removeIf((pattern) -> STREAMS.contains(pattern) || NOT_PAGES.stream().anyMatch(pattern::startsWith));
		assertThat(patterns).hasSizeGreaterThan(70);
		return patterns.stream().map((pattern) -> NAMED.getOrDefault(pattern, pattern)).toList();
	}

	private static boolean isRead(RequestMappingInfo info) {
		Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
		return methods.isEmpty() || methods.contains(RequestMethod.GET);
	}

	/** The page itself, and its further looks. */
	static List<String> looks(String pattern) {
		return Stream
			.concat(Stream.of(pattern), LOOKS.getOrDefault(pattern, List.of()).stream().map((look) -> pattern + look))
			.toList();
	}

	/** Pages of a tablet or a team are about their own, whatever the address. */
	static boolean isOfAPlace(String pattern) {
		return CrawledPlace.hasVariable(pattern) || pattern.matches("(/api)?/judge/.*|/manager(/.*)?");
	}

}
