package rimebook.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;
import org.springframework.web.util.pattern.PathPatternParser;

import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;
import rimebook.accounts.TeamLinks;
import rimebook.accounts.TeamPrincipal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.anonymous;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

/**
 * Every mapped route is asked by everybody: nobody, a seat, a team's link, and a person
 * of each role. What should happen is written down here a second time, on purpose apart
 * from the table that the doors use. A route that no line here fits fails the test, so
 * that each new page has to say who it is for.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:routes;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class RoutesIntegrationTests {

	private static final String PUBLIC = "everybody";

	private static final String NOBODY = "";

	private static final String PERSON = "administrator secretary referee accountant technical announcer";

	/** Pattern, who may read, who may change; the first line that fits counts. */
	private static final List<Line> EXPECTED = List.of(new Line("/", PUBLIC, PUBLIC),
			new Line("/error", PUBLIC, PUBLIC), new Line("/follow/**", PUBLIC, PUBLIC),
			new Line("/api/public/**", PUBLIC, PUBLIC), new Line("/problems/{code}", PUBLIC, PUBLIC),
			new Line("/actuator/health/**", PUBLIC, PUBLIC), new Line("/actuator", NOBODY, NOBODY),
			new Line("/api/openapi", PUBLIC, PUBLIC), new Line("/offline", PUBLIC, PUBLIC),
			new Line("/springdoc", NOBODY, NOBODY), new Line("/springdoc.yaml", NOBODY, NOBODY),
			new Line("/record-seen", PUBLIC, PUBLIC), new Line("/sign-in", PUBLIC, PUBLIC),
			new Line("/sign-in/refused", PUBLIC, PUBLIC), new Line("/set-up/{token}", PUBLIC, PUBLIC),
			new Line("/judge", PUBLIC, PUBLIC), new Line("/api/seat-pairings", PUBLIC, PUBLIC),
			new Line("/judge/waiting", PUBLIC, PUBLIC), new Line("/judge/**", "judge", "judge"),
			new Line("/api/judge/**", "judge", "judge"), new Line("/api/cards/**", "judge", "judge"),
			new Line("/api/points-cards/**", "judge", "judge"), new Line("/desk", PERSON, ""),
			new Line("/desk/own-password", PERSON, PERSON),
			new Line("/desk/people/**", "administrator", "administrator"),
			new Line("/desk/competitions/*/taking-back", "administrator", "administrator"),
			new Line("/desk/competitions/**", PERSON, "administrator secretary"),
			new Line("/desk/entries/**", "administrator secretary referee", "administrator secretary"),
			new Line("/desk/rosters/eligibility/**", "administrator secretary referee", "administrator secretary"),
			new Line("/desk/rosters/retention/**", "administrator secretary referee", "administrator secretary"),
			new Line("/desk/rosters/files/**", "administrator secretary", "administrator secretary"),
			new Line("/desk/rosters/**", "administrator secretary referee", "administrator secretary referee"),
			new Line("/desk/arrival/lineup/**", "administrator referee", "administrator referee"),
			new Line("/desk/arrival/**", "administrator secretary referee", "administrator secretary referee"),
			new Line("/desk/fees/**", "administrator secretary accountant", "secretary"),
			new Line("/desk/rulings/*/ruling/**", "referee", "referee"),
			new Line("/desk/rulings/**", PERSON, "administrator secretary referee"),
			new Line("/desk/draw/**", "administrator referee secretary accountant", "administrator referee"),
			new Line("/desk/panel/*/slips", "administrator referee secretary", "administrator referee secretary"),
			new Line("/desk/panel/*/slips.pdf", "administrator referee secretary", "administrator referee secretary"),
			new Line("/desk/panel/*/takeover", "administrator referee", "administrator referee"),
			new Line("/desk/panel/**", "administrator referee secretary accountant", "administrator referee secretary"),
			new Line("/desk/officials/**", "administrator referee secretary accountant",
					"administrator referee secretary"),
			new Line("/desk/stand/**", "administrator referee", "administrator referee"),
			new Line("/desk/technical/**", "administrator technical referee", "administrator technical"),
			new Line("/desk/keying/**", "administrator referee accountant", "administrator referee accountant"),
			new Line("/desk/results/*/reopening", NOBODY, "referee"),
			new Line("/desk/results/**", "administrator referee accountant", "administrator referee accountant"),
			new Line("/desk/review/**", "administrator referee", ""),
			new Line("/desk/protests/*/corrections/new", "referee accountant", "referee accountant"),
			new Line("/desk/protests/*/corrections/new/*", "referee accountant", "referee accountant"),
			new Line("/desk/protests/*/corrections/**", "administrator referee accountant secretary",
					"referee accountant"),
			new Line("/desk/protests/*/protest/*", "administrator referee accountant secretary", "referee"),
			new Line("/desk/protests/**", "administrator referee accountant secretary",
					"administrator referee accountant secretary"),
			new Line("/desk/documents/panel-review/**", "administrator referee", ""),
			new Line("/desk/documents/**", "administrator referee accountant secretary",
					"administrator referee accountant secretary"),
			new Line("/commentary/**", PUBLIC, PUBLIC), new Line("/manager", PUBLIC, PUBLIC),
			new Line("/manager/leave", PUBLIC, PUBLIC), new Line("/manager/**", "manager", "manager"),
			new Line("/desk/managers/**", "administrator secretary", "administrator secretary"),
			new Line("/desk/commentary/**", "administrator referee", "administrator referee"),
			new Line("/desk/sheet/**", PERSON, PERSON),
			new Line("/desk/letters/**", "administrator secretary", "administrator secretary"),
			new Line("/desk/music/desk/**", "administrator announcer referee secretary",
					"administrator announcer referee secretary"),
			new Line("/desk/music/deletion/**", "administrator secretary", "administrator secretary"),
			new Line("/desk/music/**", "administrator announcer referee secretary", "administrator secretary"),
			new Line("/desk/timetable/**", PERSON, "administrator referee secretary"),
			new Line("/desk/record/**", "administrator referee accountant secretary",
					"administrator referee accountant secretary"),
			new Line("/desk/archive/**", "administrator secretary", "administrator secretary"),
			new Line("/desk/copy/**", "administrator referee accountant secretary",
					"administrator referee accountant secretary"),
			new Line("/desk/rehearsal/**", "administrator referee secretary", "administrator referee secretary"),
			new Line("/desk/demo/**", PERSON, PERSON));

	@Autowired
	private MockMvcTester mvc;

	@Autowired
	private List<RequestMappingInfoHandlerMapping> mappings;

	@TestFactory
	Stream<DynamicTest> everyRouteOpensForThoseItIsMeantFor() {
		return routes().stream()
			.flatMap((route) -> askers().stream()
				.map((asker) -> DynamicTest.dynamicTest(route + " by " + asker, () -> ask(route, asker))));
	}

	@TestFactory
	Stream<DynamicTest> noFormIsTakenFromAnotherSite() {
		return routes().stream()
			.filter((route) -> !route.isRead() && !route.path().startsWith("/api/") && !route.path().equals("/error"))
			.map((route) -> DynamicTest.dynamicTest(route.toString(),
					() -> assertThat(
							isRefused(route, send(route, new Asker(route.line().writers().split(" ")[0]), false)))
						.isTrue()));
	}

	private void ask(Route route, Asker asker) {
		MvcTestResult answer = send(route, asker, true);
		assertThat(isRefused(route, answer)).as("%s by %s: %s", route, asker, answer.getResponse().getStatus())
			.isEqualTo(!route.isFor(asker));
		assertThat(answer.getResponse().getStatus()).as("the status of an empty request").isLessThan(500);
	}

	private MvcTestResult send(Route route, Asker asker, boolean withToken) {
		var request = this.mvc.method(HttpMethod.valueOf(route.method().name())).uri(route.address());
		request = request.with(asker.identity());
		if (route.contentType() != null) {
			request = request.contentType(route.contentType()).content("{}");
		}
		return (withToken ? request.with(csrf()) : request).asyncExchange();
	}

	private static boolean isRefused(Route route, MvcTestResult answer) {
		int status = answer.getResponse().getStatus();
		String door = route.path().startsWith("/judge") ? "/judge"
				: route.path().startsWith("/manager") ? "/manager" : "/sign-in";
		return status == 401 || status == 403 || route.isClosed() && status == 404 || (status == 302
				&& door.equals(answer.getResponse().getRedirectedUrl()) && !route.path().equals(door));
	}

	private List<Route> routes() {
		List<Route> routes = new ArrayList<>();
		this.mappings.forEach((mapping) -> mapping.getHandlerMethods().keySet().forEach((info) -> add(info, routes)));
		assertThat(routes).hasSizeGreaterThan(12);
		return routes;
	}

	private static void add(RequestMappingInfo info, List<Route> routes) {
		Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
		String contentType = info.getConsumesCondition()
			.getConsumableMediaTypes()
			.stream()
			.findFirst()
			.map(Object::toString)
			.orElse(null);
		for (String path : info.getPatternValues()) {
			for (RequestMethod method : methods.isEmpty() ? EnumSet.of(RequestMethod.GET) : methods) {
				routes.add(new Route(method, path, contentType));
			}
		}
	}

	private static List<Asker> askers() {
		return Stream.concat(Stream.of("nobody", "manager"), Stream.of(Role.values()).map(Role::word))
			.map(Asker::new)
			.toList();
	}

	private record Line(String pattern, String readers, String writers) {

		boolean fits(String path) {
			return PathPatternParser.defaultInstance.parse(this.pattern).matches(PathContainer.parsePath(path));
		}

	}

	private record Asker(String name) {

		RequestPostProcessor identity() {
			return switch (this.name) {
				case "nobody", PUBLIC -> anonymous();
				case "judge" -> authentication(UsernamePasswordAuthenticationToken.authenticated(
						new SeatPrincipal(new SeatCodes.Grant(new UUID(7, 7), "Judge 3, Adult")), null,
						List.of(new SimpleGrantedAuthority("ROLE_JUDGE"))));
				case "manager" -> authentication(UsernamePasswordAuthenticationToken.authenticated(
						new TeamPrincipal(
								new TeamLinks.Pass(new UUID(8, 8), new UUID(8, 9), new UUID(1, 2), Instant.MAX)),
						null, List.of(new SimpleGrantedAuthority(TeamPrincipal.AUTHORITY))));
				default -> user(this.name).roles(this.name.toUpperCase(Locale.ROOT));
			};
		}

		@Override
		public String toString() {
			return this.name;
		}

	}

	private record Route(RequestMethod method, String path, @Nullable String contentType) {

		Line line() {
			return EXPECTED.stream()
				.filter((line) -> line.fits(address()))
				.findFirst()
				.orElseThrow(() -> new AssertionError("Say in the table of this test who may open " + this.path));
		}

		boolean isFor(Asker asker) {
			String who = isRead() ? line().readers() : line().writers();
			return who.equals(PUBLIC) || List.of(who.split(" ")).contains(asker.name());
		}

		/** A route for nobody answers as if it were not there. */
		boolean isClosed() {
			return line().readers().equals(NOBODY) && line().writers().equals(NOBODY);
		}

		boolean isRead() {
			return this.method == RequestMethod.GET || this.method == RequestMethod.HEAD;
		}

		/** The path with an identity that nothing has in each of its places. */
		String address() {
			return this.path.replaceAll("\\{[^}]*}", new UUID(1, 2).toString()).replace("**", "x");
		}

		@Override
		public String toString() {
			return this.method + " " + this.path;
		}

	}

}
