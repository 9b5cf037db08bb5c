package rimebook.rehearsal;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;
import org.springframework.http.ResponseCookie;

import jakarta.servlet.DispatcherType;

/**
 * Gives every cookie of a rehearsal a name of its own. Browsers share cookies between all
 * ports of a host: without this, whoever signs in to the rehearsal would be signed out of
 * the real service, and a judge's tablet would lose its seat there. It is done at the
 * edge, where every cookie passes, so that none can be forgotten.
 */
@Configuration(proxyBeanMethods = false)
@Profile(RehearsalMark.PROFILE)
class OwnCookies {

	/** What stands before every name. */
	static final String PREFIX = "rehearsal-";

	/** Seconds that a cookie is kept: no rehearsal lasts longer by itself. */
	static final int LIFE = 12 * 60 * 60;

	private static final String BETWEEN = "; ";

	private static final Pattern KEPT = Pattern.compile("(?i); *(max-age|expires)=[^;]*");

	private static final Pattern TAKEN_BACK = Pattern.compile("(?i); *max-age=0+(?=;|$)");

	/** Before everything that asks who is there. */
	@Bean
	WebServerFactoryCustomizer<TomcatServletWebServerFactory> incomingCookies() {
		return new Incoming();
	}

	/** After everything that gives one. */
	@Bean
	FilterRegistrationBean<OutgoingCookies> outgoingCookies() {
		FilterRegistrationBean<OutgoingCookies> filter = new FilterRegistrationBean<>(new OutgoingCookies());
		filter.setOrder(Ordered.HIGHEST_PRECEDENCE);
		filter.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR, DispatcherType.ASYNC);
		filter.setAsyncSupported(true);
		return filter;
	}

	/**
	 * The header {@code Set-Cookie} as a browser gets it: under a name of the rehearsal,
	 * and to be kept for half a day, also where it would be kept for good or as long as
	 * the browser is open, which may be as long.
	 */
	static String outgoing(String header) {
		return PREFIX + (TAKEN_BACK.matcher(header).find() ? header : KEPT.matcher(header).replaceAll("") + kept());
	}

	/** In both ways, as cookies are given everywhere. */
	private static String kept() {
		return ResponseCookie.from("x").maxAge(LIFE).build().toString().substring("x=".length());
	}

	/**
	 * The header {@code Cookie} as the service reads it: its own cookies by their usual
	 * names, and none of the real service's.
	 */
	static String incoming(String header) {
		List<String> own = Arrays.stream(header.split(";"))
			.map(String::strip)
			.filter((cookie) -> cookie.startsWith(PREFIX))
			.map((cookie) -> cookie.substring(PREFIX.length()))
			.toList();
		return String.join(BETWEEN, own);
	}

	private static final class Incoming implements WebServerFactoryCustomizer<TomcatServletWebServerFactory>, Ordered {

		@Override
		public void customize(TomcatServletWebServerFactory factory) {
			factory.addEngineValves(new IncomingCookies());
		}

		/** The first valve is asked first. */
		@Override
		public int getOrder() {
			return Ordered.HIGHEST_PRECEDENCE;
		}

	}

}
