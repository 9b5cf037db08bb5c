package rimebook.rehearsal;

import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.core.Ordered;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletResponse;

/**
 * What of a rehearsal somebody may save: marked like its pages, and at the edge for the
 * same reason. A file that is found again next year says what it is.
 */
@Configuration(proxyBeanMethods = false)
@Profile(RehearsalMark.PROFILE)
class OwnFiles {

	/** Around everything that answers, also errors. */
	@Bean
	FilterRegistrationBean<MarkedFiles> markedFiles() {
		FilterRegistrationBean<MarkedFiles> filter = new FilterRegistrationBean<>(new MarkedFiles());
		filter.setOrder(Ordered.HIGHEST_PRECEDENCE + 1);
		filter.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR, DispatcherType.ASYNC);
		filter.setAsyncSupported(true);
		return filter;
	}

	/**
	 * An archive is read without a service, so nothing in it would say what it is: of a
	 * rehearsal there is none.
	 */
	@Bean
	FilterRegistrationBean<Filter> noArchives() {
		FilterRegistrationBean<Filter> filter = new FilterRegistrationBean<>((request, response,
				chain) -> ((HttpServletResponse) response).sendError(HttpServletResponse.SC_FORBIDDEN));
		filter.addUrlPatterns("/desk/archive/*");
		return filter;
	}

}
