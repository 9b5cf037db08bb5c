package rimebook.standby;

import java.util.stream.Stream;

import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

import rimebook.live.WentBack;
import rimebook.pages.Alarm;
import rimebook.pages.DeskEntry;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;

/** Shows the second place where people look. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(CopySettings.class)
class StandbyConfiguration {

	static final String PAGE = "/desk/copy";

	@Bean
	DeskEntry copyDeskEntry() {
		return new DeskEntry(790, PAGE, "copy");
	}

	@Bean
	FilterRegistrationBean<LifeHeader> lifeHeader(ServiceLives lives) {
		FilterRegistrationBean<LifeHeader> filter = new FilterRegistrationBean<>(new LifeHeader(lives));
		filter.addUrlPatterns("/api/judge/*", "/api/cards/*", "/api/points-cards/*");
		return filter;
	}

	@Bean
	WebMvcConfigurer onlyWhatIsOfThisService(ServiceLives lives) {
		return new WebMvcConfigurer() {
			@Override
			public void addInterceptors(InterceptorRegistry registry) {
				registry.addInterceptor(new OfThisService(lives))
					.addPathPatterns("/api/judge/**", "/api/cards/**", "/api/points-cards/**");
			}
		};
	}

	/** A worker may serve the pages above its own address only where this is said. */
	@Bean
	FilterRegistrationBean<Filter> workersScope() {
		FilterRegistrationBean<Filter> filter = new FilterRegistrationBean<>((request, response, chain) -> {
			((HttpServletResponse) response).setHeader("Service-Worker-Allowed", "/judge/");
			chain.doFilter(request, response);
		});
		filter.addUrlPatterns("/js/card/worker.js");
		return filter;
	}

	@Bean
	WentBack wentBack(ServiceLives lives) {
		return () -> lives.known().size() - 1;
	}

	@Bean
	Alarm.Source copyAlarm(Copying copying) {
		return () -> {
			CopyState state = copying.state();
			return state.isWell() ? Stream.empty() : Stream.of(new Alarm(state.why(), PAGE, true));
		};
	}

	@Bean
	WaitingList copyWaiting(Copying copying) {
		return (viewer) -> {
			CopyState state = copying.state();
			return state.isWell() ? Stream.empty() : Stream
				.of(new Waiting(0, "standby.waiting", 0, new Waiting.Place(state.why().english(), ""), PAGE));
		};
	}

	@Bean
	WaitingList lostWaiting(ReturnAlarm back) {
		return (viewer) -> back.alarms()
			.filter(Alarm::isGrave)
			.map((alarm) -> new Waiting(0, "standby.waiting.lost", 0, new Waiting.Place(alarm.what().english(), ""),
					PAGE));
	}

}
