package rimebook.rehearsal;

import java.util.Arrays;
import java.util.List;

import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;

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

	private static final String BETWEEN = "; ";

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
