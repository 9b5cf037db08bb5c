package rimebook.crawl;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Stream;

import jakarta.servlet.http.Cookie;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.context.ApplicationContext;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.web.context.RequestAttributeSecurityContextRepository;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;
import rimebook.accounts.TeamLinks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Every page and every part of a page that can be fetched, asked by everybody, in every
 * state that a competition, an event, a segment and a performance can be in. The pages
 * are taken from the mappings, so a new one is walked through as soon as it is there.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:routes;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class PagesCrawlIntegrationTests {

	/** Documents that say in a sentence why there is none yet. */
	private static final Set<String> WITH_REASON = Set.of("/desk/keying/{segment}/blank-cards.pdf",
			"/desk/documents/{sheet}/0/sheet.pdf", "/follow/paper/{sheet}/0/00000000000000000000000000000000",
			"/desk/documents/{sheet}/0/compare/00000000000000000000000000000000");

	/** What a page may answer: itself, nothing new, elsewhere, or a refusal. */
	private static final Set<Integer> ANSWERS = Set.of(200, 204, 301, 302, 303, 401, 403, 404);

	/** Everything in every state, not in turns and once for each: twice as long. */
	private static final boolean WHOLE = "whole".equals(System.getProperty("rimebook.crawl"));

	private static final String NOBODY = "nobody";

	/** Nobody has such a link or file, or it only leads on to another. */
	private static final Set<String> NEVER_OPEN = Set.of("/set-up/no-such-token",
			"/follow/{competition}/{event}/why/ask", "/follow/{competition}/{event}/{segment}/why/ask",
			"/follow/{competition}/find/ask", "/desk/music/file/{version}", "/manager/music/file/{version}");

	@Autowired
	private MockMvcTester mvc;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private List<RequestMappingInfoHandlerMapping> mappings;

	private final Set<String> faults = new ConcurrentSkipListSet<>();

	private final Map<String, Set<Integer>> answers = new ConcurrentSkipListMap<>();

	private final Map<UUID, String> tokens = new ConcurrentHashMap<>();

	@Test
	void noPageFailsForAnybodyInAnyState() {
		List<String> patterns = CrawledPages.patterns(this.mappings);
		Map<String, RequestPostProcessor> people = people();
		patterns.stream()
			.filter((pattern) -> !CrawledPages.isOfAPlace(pattern))
			.forEach((pattern) -> people
				.forEach((who, identity) -> look(pattern, pattern, who, identity, "nothing there yet")));
		List<CrawledPlace> places = new CrawledPlaces(this.context).build();
		patterns.stream().parallel().forEach((pattern) -> walk(pattern, placesOf(pattern, places), people));
		assertThat(this.faults).isEmpty();
		assertThat(patterns).filteredOn((pattern) -> !NEVER_OPEN.contains(pattern))
			.allSatisfy((pattern) -> assertThat(this.answers.get(pattern)).as(pattern).containsAnyOf(200, 204));
	}

	/** Where a page can differ: everywhere, once for each state of an event, or once. */
	private static List<CrawledPlace> placesOf(String pattern, List<CrawledPlace> places) {
		if (!CrawledPages.isOfAPlace(pattern)) {
			return places.subList(0, 1);
		}
		boolean ofTheEvent = pattern.matches("/(desk|manager).*") && !pattern.contains("{segment}");
		if (WHOLE || !(ofTheEvent || isSlow(pattern))) {
			return places;
		}
		Set<String> seen = new HashSet<>();
		return places.stream().filter((place) -> seen.add(place.event())).toList();
	}

	/**
	 * Documents on paper and pictures are slow, and data shows what the public pages
	 * show.
	 */
	private static boolean isSlow(String pattern) {
		return pattern.endsWith(".pdf") || pattern.endsWith(".png") || pattern.startsWith("/api/public/");
	}

	/**
	 * Ask everybody everywhere. In every state but the first, what is slow is asked only
	 * by those in turn to whom it is open, and of those to whom a page was always shut
	 * only one in turn asks.
	 */
	private void walk(String pattern, List<CrawledPlace> places, Map<String, RequestPostProcessor> people) {
		Doors doors = new Doors();
		for (CrawledPlace place : places) {
			Map<String, RequestPostProcessor> askers = askers(people, place);
			for (String look : CrawledPages.looks(pattern)) {
				for (String address : place.addresses(look)) {
					boolean everybody = isSlow(pattern) ? doors.readers.isEmpty() : doors.isFirst(place);
					List<String> asked = (WHOLE || everybody) ? List.copyOf(askers.keySet())
							: isSlow(pattern) ? doors.reader() : doors.openOrOneShut(askers.keySet());
					asked.forEach((who) -> doors.note(who, look(pattern, address, who,
							withLink(pattern, place, who, Objects.requireNonNull(askers.get(who))), place.name())));
				}
			}
		}
	}

	/** Who was let in at a page so far. */
	private static final class Doors {

		private final Set<String> readers = new LinkedHashSet<>();

		private final Set<String> notShut = new LinkedHashSet<>();

		private @Nullable CrawledPlace first;

		private int turn;

		/** The first place that has such a page; some have none. */
		boolean isFirst(CrawledPlace place) {
			this.first = (this.first != null) ? this.first : place;
			return place == this.first;
		}

		void note(String who, int status) {
			if (status == 200 || status == 204) {
				this.readers.add(who);
			}
			if (status != 401 && status != 403 && !(status == 302 && who.equals(NOBODY))) {
				this.notShut.add(who);
			}
		}

		List<String> reader() {
			return inTurn(List.copyOf(this.readers));
		}

		List<String> openOrOneShut(Set<String> people) {
			List<String> shut = people.stream().filter((who) -> !this.notShut.contains(who)).toList();
			return Stream.concat(people.stream().filter(this.notShut::contains), inTurn(shut).stream()).toList();
		}

		private List<String> inTurn(List<String> people) {
			return people.isEmpty() ? people : List.of(people.get(this.turn++ % people.size()));
		}

	}

	private Map<String, RequestPostProcessor> people() {
		Map<String, RequestPostProcessor> people = new LinkedHashMap<>();
		people.put(NOBODY, (request) -> request);
		for (Role role : Role.values()) {
			if (role != Role.JUDGE) {
				String name = Crew.add(this.context, role);
				UserDetails known = this.context.getBean(UserDetailsService.class).loadUserByUsername(name);
				people.put(role.word(), signedIn(known, known.getAuthorities()));
			}
		}
		return people;
	}

	/**
	 * Whoever looks at a commentator's page has the link of that competition, and whoever
	 * looks at a team's without being anybody else has that of the team.
	 */
	private RequestPostProcessor withLink(String pattern, CrawledPlace place, String who,
			RequestPostProcessor identity) {
		if (who.equals(NOBODY) && pattern.startsWith("/manager") && !place.ids().get("entry").isEmpty()) {
			UUID entry = UUID.fromString(place.ids().get("entry").get(0));
			String token = this.tokens.computeIfAbsent(entry,
					(absent) -> this.context.getBean(TeamLinks.class)
						.give(new TeamLinks.GiveLink(UUID.fromString(place.ids().get("competition").get(0)), absent,
								Instant.now().plusSeconds(3600)), SmallCompetition.SECRETARY));
			return (request) -> {
				request.setCookies(new Cookie("rimebook-team", token));
				return identity.postProcessRequest(request);
			};
		}
		if (!pattern.startsWith("/commentary/")) {
			return identity;
		}
		UUID competition = UUID.fromString(place.ids().get("competition").get(0));
		String token = this.tokens.computeIfAbsent(competition,
				(absent) -> this.context.getBean(CommentaryLinks.class)
					.issue(new CommentaryLinks.IssueLink(absent, "Aino Lumi", true, Instant.now().plusSeconds(3600)),
							SmallCompetition.REFEREE));
		return (request) -> {
			request.setCookies(new Cookie("rimebook-commentary", token));
			return identity.postProcessRequest(request);
		};
	}

	/** Everybody, and the tablet of a seat of that place. */
	private static Map<String, RequestPostProcessor> askers(Map<String, RequestPostProcessor> people,
			CrawledPlace place) {
		Map<String, RequestPostProcessor> askers = new LinkedHashMap<>(people);
		SeatPrincipal seat = new SeatPrincipal(
				new SeatCodes.Grant(UUID.fromString(place.ids().get("seat").get(0)), "Judge 1, Junior"));
		askers.put("judge", signedIn(seat, List.of(new SimpleGrantedAuthority(Role.JUDGE.authority()))));
		return askers;
	}

	/**
	 * Put where the doors look for it; the test support looks for its own place anew in
	 * each request, with four exceptions thrown.
	 */
	private static RequestPostProcessor signedIn(Object who, Collection<? extends GrantedAuthority> roles) {
		SecurityContext context = new SecurityContextImpl(
				UsernamePasswordAuthenticationToken.authenticated(who, null, roles));
		return (request) -> {
			request.setAttribute(RequestAttributeSecurityContextRepository.DEFAULT_REQUEST_ATTR_NAME, context);
			return request;
		};
	}

	/** Ask, note what is wrong, and tell the status. */
	private int look(String pattern, String address, String who, RequestPostProcessor identity, String place) {
		MvcTestResult answer = this.mvc.get().uri(address).with(identity).asyncExchange();
		int status = answer.getResponse().getStatus();
		this.answers.computeIfAbsent(pattern, (each) -> new ConcurrentSkipListSet<>()).add(status);
		faults(answer, pattern)
			.forEach((fault) -> this.faults.add(pattern + " for " + who + " (" + place + "): " + fault));
		return status;
	}

	private static List<String> faults(MvcTestResult answer, String pattern) {
		if (answer.getUnresolvedException() != null) {
			return List.of(String.valueOf(answer.getUnresolvedException().getMessage()));
		}
		int status = answer.getResponse().getStatus();
		if (!ANSWERS.contains(status) && !(status == 422 && WITH_REASON.contains(pattern))) {
			return List.of("status " + status);
		}
		boolean page = String.valueOf(answer.getResponse().getContentType()).startsWith("text/html");
		return page ? PageFaults.in(html(answer)) : List.of();
	}

	private static String html(MvcTestResult answer) {
		return new String(answer.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
	}

	@ParameterizedTest
	@ValueSource(strings = { "<p>??marks.no-such-word_en??</p>", "<p>No. {0}</p>", "<p>${team}</p>", "<p>[[#{a}]]</p>",
			"<p>by null</p>", "<p title=\"#{word}\"></p>", "<h1> </h1>", "<h1><span></span></h1>",
			"<html><p>No heading</p></html>", "<p>EntryView[id=3]</p>", "<p>{0,choice,1#one}</p>", "<p>undefined</p>",
			"<p>NaN %</p>", "<p>rimebook.entries.Entry@1f</p>", "<p>Optional.empty</p>", "<p th:text=\"a\"></p>",
			"<p>a]]</p>" })
	void whatWasNotFilledInIsFound(String html) {
		assertThat(PageFaults.in(html)).isNotEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "<html><h1>Desk <b>1</b></h1></html>", "<p data-word=\"Element {0}\">Really?</p>",
			"<!-- ${old} --><script>let a = null;</script>", "<ul id=\"words\" hidden><li>{0} of {1}</li></ul>" })
	void whatIsWellIsLeftAlone(String html) {
		assertThat(PageFaults.in(html)).isEmpty();
	}

}
