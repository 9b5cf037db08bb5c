package rimebook.web;

import java.time.Clock;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer.FrameOptionsConfig;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer.XXssConfig;
import org.springframework.security.config.annotation.web.configurers.SessionManagementConfigurer.SessionFixationConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.authentication.session.NullAuthenticatedSessionStrategy;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.header.HeaderWriter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.DelegatingRequestMatcherHeaderWriter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.CookieRequestCache;

import rimebook.accounts.CodeGuessing;
import rimebook.accounts.CrewSigns;
import rimebook.accounts.DoorRecord;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.TeamLinks;
import rimebook.pages.ContentPolicy;

/**
 * Four doors, one table ({@link PathRules}): programs at {@code /api}, judges' tablets at
 * {@code /judge}, managers of teams at {@code /manager}, people everywhere else. Only
 * these have a session; the others show the token of their seat or team with each
 * request. Public, so that tests of single controllers can import it.
 */
@Configuration(proxyBeanMethods = false)
public class SecurityConfiguration {

	/**
	 * Files of pages, and parts that are exchanged in a page. What is said of documents
	 * alone is left out: at a dozen files it would be a twentieth of all that a first
	 * look at a page brings over the line.
	 */
	@Bean
	@Order(0)
	SecurityFilterChain fileDoor(HttpSecurity http) {
		return http.securityMatcher(SecurityConfiguration::isPiece)
			.csrf(AbstractHttpConfigurer::disable)
			.requestCache(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.authorizeHttpRequests(PathRules::into)
			.headers((headers) -> headers
				.contentSecurityPolicy((policy) -> policy.policyDirectives(ContentPolicy.DIRECTIVES))
				.frameOptions(FrameOptionsConfig::disable)
				.xssProtection(XXssConfig::disable))
			.build();
	}

	private static boolean isPiece(HttpServletRequest request) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		return DoorValve.fits(path, DoorValve.FILES)
				|| path.startsWith("/follow/") && "live".equals(request.getParameter("part"));
	}

	/**
	 * Programs: no session and so no CSRF token. The seat's cookie is SameSite=Strict,
	 * and bodies are JSON only, which no form of another site can send.
	 */
	@Bean
	@Order(1)
	SecurityFilterChain programDoor(HttpSecurity http, AttemptLimits limits, KnownPlaces places,
			ObjectProvider<SeatCodes> seats, CrewCookie crew, ObjectProvider<CodeGuessing> guesses,
			ObjectProvider<DoorRecord> record) {
		ProblemWriter problems = new ProblemWriter();
		return http.securityMatcher("/api/**")
			.csrf(AbstractHttpConfigurer::disable)
			.requestCache(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.exceptionHandling((refused) -> refused.authenticationEntryPoint(problems).accessDeniedHandler(problems))
			.addFilterBefore(new BodyLimitFilter(), CsrfFilter.class)
			.addFilterBefore(new AttemptFilter(limits, places, guesses, record), AnonymousAuthenticationFilter.class)
			.addFilterBefore(new SeatDeviceFilter(seats, crew), AnonymousAuthenticationFilter.class)
			.authorizeHttpRequests(PathRules::into)
			.headers(SecurityConfiguration::headers)
			.build();
	}

	/**
	 * Judges' tablets: whoever has no seat is sent to the page where the code is typed.
	 */
	@Bean
	@Order(2)
	SecurityFilterChain tabletDoor(HttpSecurity http, AttemptLimits limits, KnownPlaces places,
			ObjectProvider<SeatCodes> seats, CrewCookie crew, ObjectProvider<CodeGuessing> guesses,
			ObjectProvider<DoorRecord> record) {
		LoginUrlAuthenticationEntryPoint join = new LoginUrlAuthenticationEntryPoint("/judge");
		return http.securityMatcher("/judge", "/judge/**")
			.csrf((csrf) -> csrf.csrfTokenRepository(tokens()))
			.requestCache(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.exceptionHandling((refused) -> refused.authenticationEntryPoint(join))
			.addFilterBefore(new AttemptFilter(limits, places, guesses, record), AnonymousAuthenticationFilter.class)
			.addFilterBefore(new SeatDeviceFilter(seats, crew), AnonymousAuthenticationFilter.class)
			.authorizeHttpRequests(PathRules::into)
			.headers(SecurityConfiguration::headers)
			.build();
	}

	/**
	 * Managers of teams: whoever shows no good link is sent to the page that says why,
	 * and opens one. Whoever is signed in as a person in the same browser stays so, and
	 * is nobody here.
	 */
	@Bean
	@Order(3)
	SecurityFilterChain teamDoor(HttpSecurity http, AttemptLimits limits, KnownPlaces places,
			ObjectProvider<TeamLinks> links, ObjectProvider<CodeGuessing> guesses, ObjectProvider<DoorRecord> record) {
		LoginUrlAuthenticationEntryPoint open = new LoginUrlAuthenticationEntryPoint("/manager");
		PageRefusal refusal = new PageRefusal(record);
		return http.securityMatcher("/manager", "/manager/**")
			.csrf((csrf) -> csrf.csrfTokenRepository(tokens())
				// Each request brings its link anew, and no form that lies open may grow
				// too old by that.
				.sessionAuthenticationStrategy(new NullAuthenticatedSessionStrategy()))
			.requestCache(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.exceptionHandling((refused) -> refused.authenticationEntryPoint(open).accessDeniedHandler(refusal))
			.addFilterBefore(new AttemptFilter(limits, places, guesses, record), AnonymousAuthenticationFilter.class)
			.addFilterBefore(new TeamLinkFilter(links), AnonymousAuthenticationFilter.class)
			.authorizeHttpRequests(PathRules::into)
			.headers(SecurityConfiguration::headers)
			.headers((headers) -> headers.referrerPolicy((policy) -> policy.policy(ReferrerPolicy.NO_REFERRER)))
			.build();
	}

	/**
	 * People: name and password once, then a session whose life is counted from there.
	 */
	@Bean
	@Order(4)
	SecurityFilterChain peopleDoor(HttpSecurity http, AttemptLimits limits, KnownPlaces places, CrewCookie crew,
			ObjectProvider<CodeGuessing> guesses, ObjectProvider<DoorRecord> record) {
		CookieRequestCache asked = new CookieRequestCache();
		SignInOutcome outcome = new SignInOutcome(record, crew, asked);
		PageRefusal refusal = new PageRefusal(record);
		return http.csrf((csrf) -> csrf.csrfTokenRepository(tokens()))
			.sessionManagement((session) -> session.sessionFixation(SessionFixationConfigurer::newSession))
			.requestCache((cache) -> cache.requestCache(asked))
			.formLogin((form) -> form.loginPage("/sign-in")
				.usernameParameter("signInName")
				.successHandler(outcome)
				.failureHandler(outcome))
			.exceptionHandling((refused) -> refused.authenticationEntryPoint(refusal).accessDeniedHandler(refusal))
			.addFilterBefore(new AttemptFilter(limits, places, guesses, record),
					UsernamePasswordAuthenticationFilter.class)
			.logout((logout) -> logout.logoutUrl("/sign-out").logoutSuccessUrl("/"))
			.authorizeHttpRequests(PathRules::into)
			.headers(SecurityConfiguration::headers)
			.build();
	}

	/**
	 * Requests are timed as a whole. Each filter besides, and each refusal as an error,
	 * would be work for figures that nobody reads.
	 */
	@Bean
	SecurityObservationSettings securityObservationSettings() {
		return SecurityObservationSettings.noObservations();
	}

	/** Shared by the doors. Tests of single controllers have no clock bean. */
	@Bean
	AttemptLimits attemptLimits(ObjectProvider<Clock> clocks) {
		return new AttemptLimits(clocks.getIfAvailable(Clock::systemUTC));
	}

	@Bean
	CrewCookie crewCookie(ObjectProvider<CrewSigns> signs, ObjectProvider<Clock> clocks) {
		return new CrewCookie(signs, clocks.getIfAvailable(Clock::systemUTC));
	}

	@Bean
	KnownPlaces knownPlaces() {
		return new KnownPlaces();
	}

	private static CookieCsrfTokenRepository tokens() {
		CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
		tokens.setCookieCustomizer((cookie) -> cookie.sameSite("Strict"));
		tokens.setCookieName("rimebook-form");
		return tokens;
	}

	private static void headers(HeadersConfigurer<HttpSecurity> headers) {
		headers.contentSecurityPolicy((policy) -> policy.policyDirectives(ContentPolicy.DIRECTIVES))
			.referrerPolicy((policy) -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
			.permissionsPolicyHeader((policy) -> policy.policy(ContentPolicy.FORBIDDEN_DEVICES))
			.addHeaderWriter(ownWindow());
	}

	/**
	 * Without TLS browsers pay no heed to it, and say so in their console at each page.
	 */
	private static HeaderWriter ownWindow() {
		CrossOriginOpenerPolicyHeaderWriter writer = new CrossOriginOpenerPolicyHeaderWriter();
		writer.setPolicy(CrossOriginOpenerPolicy.SAME_ORIGIN);
		return new DelegatingRequestMatcherHeaderWriter(HttpServletRequest::isSecure, writer);
	}

}
