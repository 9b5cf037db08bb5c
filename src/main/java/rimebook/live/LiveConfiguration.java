package rimebook.live;

import java.time.Clock;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.binder.MeterBinder;
import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;

import rimebook.pages.DoorAnswers;

/** Puts the kept bytes in front of the house. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(LiveSettings.class)
class LiveConfiguration {

	private static final String REHEARSAL = "rehearsal";

	/** After the character encoding and the forwarded headers, before sessions. */
	private static final int FIRST = Ordered.HIGHEST_PRECEDENCE + 20;

	/** A rehearsal marks what goes out. */
	@Bean
	@Profile(REHEARSAL)
	FilterRegistrationBean<RenditionFilter> renditionFilter(KeptAnswers answers) {
		FilterRegistrationBean<RenditionFilter> filter = new FilterRegistrationBean<>(new RenditionFilter(answers));
		filter.addUrlPatterns("/*");
		filter.setOrder(FIRST);
		return filter;
	}

	@Bean
	FilterRegistrationBean<OtherSites> otherSites() {
		FilterRegistrationBean<OtherSites> filter = new FilterRegistrationBean<>(new OtherSites());
		filter.addUrlPatterns("/api/public/*", "/api/openapi", "/follow/*");
		filter.setOrder(FIRST - 1);
		return filter;
	}

	/** A worker may serve pages above its own address only where this is said. */
	@Bean
	FilterRegistrationBean<Filter> offlineScope() {
		FilterRegistrationBean<Filter> filter = new FilterRegistrationBean<>((request, response, chain) -> {
			((HttpServletResponse) response).setHeader("Service-Worker-Allowed", "/follow/");
			chain.doFilter(request, response);
		});
		filter.addUrlPatterns("/js/follow/worker.js");
		return filter;
	}

	/**
	 * Plain requests for kept bytes are answered at the door, by no thread of their own.
	 */
	@Bean
	@Profile("!" + REHEARSAL)
	DoorAnswers keptForTheDoor(KeptAnswers answers) {
		return answers::answer;
	}

	/** The others are answered before anything else of the house is asked. */
	@Bean
	@Profile("!" + REHEARSAL)
	WebServerFactoryCustomizer<TomcatServletWebServerFactory> keptAtTheDoor(KeptAnswers answers) {
		return (factory) -> factory.addContextValves(new KeptValve(answers));
	}

	/** Streams begin there, too. */
	@Bean
	WebServerFactoryCustomizer<TomcatServletWebServerFactory> signalsAtTheDoor(MomentWatch watch,
			FollowerRegister followers, PollPace pace, Clock clock) {
		return (factory) -> factory.addContextValves(new SignalsValve(watch, followers, pace, clock));
	}

	@Bean
	MeterBinder followerCount(FollowerRegister followers) {
		return (registry) -> Gauge.builder("rimebook.followers", followers, FollowerRegister::count)
			.description("Open connections that follow a competition")
			.register(registry);
	}

}
