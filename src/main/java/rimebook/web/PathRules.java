package rimebook.web;

import static rimebook.accounts.Role.ACCOUNTANT;
import static rimebook.accounts.Role.ANNOUNCER;
import static rimebook.accounts.Role.REFEREE;
import static rimebook.accounts.Role.SECRETARY;
import static rimebook.accounts.Role.TECHNICAL;
import static rimebook.web.PathRule.anyPerson;
import static rimebook.web.PathRule.everybody;
import static rimebook.web.PathRule.people;
import static rimebook.web.PathRule.seat;
import static rimebook.web.PathRule.team;

import java.util.List;
import java.util.Set;

import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.web.util.pattern.PathPatternParser;

import rimebook.accounts.Role;
import rimebook.accounts.TeamPrincipal;

/**
 * The one table of who may open what. The first line that fits a path decides; a path
 * that no line fits is refused to everybody.
 */
final class PathRules {

	// @formatter:off
	static final List<PathRule> TABLE = List.of(
			everybody("/"),
			everybody("/follow/**"),
			everybody("/record-seen"),
			everybody("/offline"),
			everybody("/commentary/**"),
			everybody("/manager"),
			everybody("/manager/leave"),
			team("/manager/**"),
			everybody("/api/public/**"),
			everybody("/api/openapi/**"),
			everybody("/problems/**"),
			everybody("/css/**"),
			everybody("/js/**"),
			everybody("/img/**"),
			everybody("/webjars/**"),
			everybody("/favicon.ico"),
			everybody("/error"),
			everybody("/actuator/health/**"),

			everybody("/sign-in/**"),
			everybody("/sign-out"),
			everybody("/set-up/**"),
			everybody("/judge"),
			everybody("/api/seat-pairings"),

			everybody("/judge/waiting"),
			seat("/judge/**"),
			seat("/api/cards/**"),
			seat("/api/points-cards/**"),
			seat("/api/judge/**"),

			anyPerson("/desk"),
			anyPerson("/desk/own-password"),
			people("/desk/people/**"),
			people("/desk/competitions/*/taking-back"),
			people("/desk/competitions/**", SECRETARY).read(REFEREE, ACCOUNTANT, ANNOUNCER, TECHNICAL),
			people("/desk/entries/**", SECRETARY).read(REFEREE),
			people("/desk/rosters/eligibility/**", SECRETARY).read(REFEREE),
			people("/desk/rosters/files/**", SECRETARY),
			people("/desk/rosters/retention/**", SECRETARY).read(REFEREE),
			people("/desk/rosters/**", SECRETARY, REFEREE),
			people("/desk/arrival/lineup/**", REFEREE),
			people("/desk/managers/**", SECRETARY),
			people("/desk/arrival/**", SECRETARY, REFEREE),
			people("/desk/fees/**").writtenBy(SECRETARY).read(ACCOUNTANT),
			people("/desk/letters/**", SECRETARY),
			people("/desk/rulings/**", SECRETARY, REFEREE).read(ACCOUNTANT, ANNOUNCER, TECHNICAL),
			people("/desk/music/desk/**", ANNOUNCER, REFEREE, SECRETARY),
			people("/desk/music/deletion/**", SECRETARY),
			people("/desk/music/**", SECRETARY).read(REFEREE, ANNOUNCER),
			people("/desk/timetable/**", REFEREE, SECRETARY).read(ACCOUNTANT, ANNOUNCER, TECHNICAL),
			people("/desk/draw/**", REFEREE).read(SECRETARY, ACCOUNTANT),
			people("/desk/panel/*/slips", REFEREE, SECRETARY),
			people("/desk/panel/*/slips.pdf", REFEREE, SECRETARY),
			people("/desk/panel/*/takeover", REFEREE),
			people("/desk/panel/**", REFEREE, SECRETARY).read(ACCOUNTANT),
			people("/desk/officials/**", REFEREE, SECRETARY).read(ACCOUNTANT),
			people("/desk/stand/**", REFEREE),
			people("/desk/technical/**", TECHNICAL).read(REFEREE),
			people("/desk/keying/**", ACCOUNTANT, REFEREE),
			people("/desk/results/**", REFEREE, ACCOUNTANT),
			people("/desk/review/**", REFEREE),
			people("/desk/protests/**", REFEREE, ACCOUNTANT, SECRETARY),
			people("/desk/commentary/**", REFEREE),
			people("/desk/sheet/**", ANNOUNCER, REFEREE, SECRETARY, ACCOUNTANT, TECHNICAL),
			people("/desk/documents/panel-review/**", REFEREE),
			people("/desk/documents/**", REFEREE, ACCOUNTANT, SECRETARY),
			people("/desk/record/**", REFEREE, ACCOUNTANT, SECRETARY),
			people("/desk/archive/**", SECRETARY),
			people("/desk/copy/**", REFEREE, ACCOUNTANT, SECRETARY),
			people("/desk/rehearsal/**", REFEREE, SECRETARY),
			anyPerson("/desk/demo/**"));
	// @formatter:on

	/** A routed path is decoded already and is not decoded again. */
	private static final PathContainer.Options PLAIN = PathContainer.Options.create('/', false);

	private PathRules() {
	}

	/** Write the table into a security chain. */
	static void into(
			AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
		TABLE.forEach((rule) -> add(rule, requests));
		requests.anyRequest().denyAll();
	}

	private static void add(PathRule rule,
			AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
		if (rule.open()) {
			requests.requestMatchers(rule.pattern()).permitAll();
			return;
		}
		if (rule.linked()) {
			requests.requestMatchers(rule.pattern()).hasAuthority(TeamPrincipal.AUTHORITY);
			return;
		}
		requests.requestMatchers(HttpMethod.GET, rule.pattern()).hasAnyRole(names(rule.readers()));
		requests.requestMatchers(HttpMethod.HEAD, rule.pattern()).hasAnyRole(names(rule.readers()));
		requests.requestMatchers(rule.pattern()).hasAnyRole(names(rule.writers()));
	}

	/**
	 * The role that a person with these roles acts in at the routed path: the first that
	 * may write there, else the first they have.
	 */
	static Role actedIn(List<Role> held, String path) {
		return TABLE.stream()
			.filter((rule) -> fits(rule, path))
			.findFirst()
			.flatMap((rule) -> held.stream().sorted().filter(rule.writers()::contains).findFirst())
			.orElseGet(() -> held.stream().sorted().findFirst().orElseThrow());
	}

	/**
	 * The line that decides about a routed path.
	 * @throws java.util.NoSuchElementException if none fits
	 */
	static PathRule of(String path) {
		return TABLE.stream().filter((rule) -> fits(rule, path)).findFirst().orElseThrow();
	}

	/** Tell whether some line of the table fits the routed path. */
	static boolean know(String path) {
		return TABLE.stream().anyMatch((rule) -> fits(rule, path));
	}

	private static boolean fits(PathRule rule, String path) {
		return PathPatternParser.defaultInstance.parse(rule.pattern()).matches(PathContainer.parsePath(path, PLAIN));
	}

	private static String[] names(Set<Role> roles) {
		return roles.stream().map(Role::name).toArray(String[]::new);
	}

}
