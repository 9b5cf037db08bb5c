package rimebook.web;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.Supplier;

import javax.sql.DataSource;

import jakarta.servlet.http.HttpServletRequest;
import org.apache.catalina.connector.Connector;
import org.apache.catalina.valves.RemoteIpValve;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.servlet.CookieSameSiteSupplier;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.session.web.http.SessionRepositoryFilter;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.multipart.MultipartResolver;
import org.springframework.web.multipart.support.StandardServletMultipartResolver;

import rimebook.accounts.TeamLinks;
import rimebook.pages.DoorAnswers;

/** Sets up the server so that a crowd never keeps the crew waiting. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties({ DoorSettings.class, SessionSettings.class })
class DoorConfiguration {

	private static final String FORWARDED = "server.forward-headers-strategy";

	@Bean
	Door door(DoorSettings settings, CrewCookie crew, ObjectProvider<DoorAnswers> answers, Drain drain,
			Environment environment) {
		refuseStrangersWord(environment.getProperty(FORWARDED, "none"));
		SingletonSupplier<DoorAnswers> known = SingletonSupplier.ofNullable(answers::getIfAvailable);
		return new Door(settings, crew::comesWith, known::get, drain);
	}

	@Bean
	Drain drain(DoorSettings settings) {
		return new Drain(settings.drain());
	}

	/** Early, and so without any bean but the settings' text. */
	@Bean
	static BeanPostProcessor crowdConnections(Environment environment) {
		DoorSettings settings = Binder.get(environment).bindOrCreate("rimebook.door", DoorSettings.class);
		return new BeanPostProcessor() {
			@Override
			public Object postProcessAfterInitialization(Object bean, String name) {
				return (bean instanceof DataSource source) ? new CrowdConnections(source, settings) : bean;
			}
		};
	}

	/** The framework's own ways believe whoever says so, or every private network. */
	private static void refuseStrangersWord(String strategy) {
		if (!"none".equalsIgnoreCase(strategy)) {
			throw new IllegalStateException(FORWARDED + "=" + strategy
					+ " would let anybody in the rink's network claim "
					+ "any address. Leave it out and give the exact addresses of your proxies in rimebook.door.proxies.");
		}
	}

	/** Before anything asks who is signed in. */
	@Bean
	FilterRegistrationBean<SessionLifeFilter> sessionLifeFilter(SessionSettings settings,
			ObjectProvider<Clock> clocks) {
		FilterRegistrationBean<SessionLifeFilter> filter = new FilterRegistrationBean<>(
				new SessionLifeFilter(clocks.getIfAvailable(Clock::systemUTC), settings.life()));
		filter.addUrlPatterns("/*");
		filter.setOrder(SessionRepositoryFilter.DEFAULT_ORDER + 1);
		return filter;
	}

	/** Sessions are known by then, and nothing has asked for a parameter yet. */
	@Bean
	FilterRegistrationBean<LargeBodyFilter> largeBodyFilter(ObjectProvider<TeamLinks> links) {
		FilterRegistrationBean<LargeBodyFilter> filter = new FilterRegistrationBean<>(
				new LargeBodyFilter((request) -> TeamLinkFilter.isGood(links, request)));
		filter.addUrlPatterns("/*");
		filter.setOrder(SessionRepositoryFilter.DEFAULT_ORDER + 2);
		return filter;
	}

	/** What was refused unread is not read for its error page either. */
	@Bean
	MultipartResolver multipartResolver() {
		return new StandardServletMultipartResolver() {
			@Override
			public boolean isMultipart(HttpServletRequest request) {
				return request.getAttribute(DoorValve.UNREAD) == null && super.isMultipart(request);
			}
		};
	}

	/**
	 * The cookie that remembers a page is the framework's own and says nothing by itself.
	 */
	@Bean
	CookieSameSiteSupplier sameSiteOfRememberedPage() {
		return CookieSameSiteSupplier.ofLax().whenHasName("REDIRECT_URI");
	}

	/** The ports, and who looks after them. */
	static class Door implements WebServerFactoryCustomizer<TomcatServletWebServerFactory>, AutoCloseable {

		private static final int CREW_CONNECTIONS = 1000;

		/**
		 * How many may wait to be let in: as many as Linux lets (net.core.somaxconn). Who
		 * is turned away there knocks again after a whole second.
		 */
		private static final int KNOCKING = 4096;

		private static final long SWEEP = 250;

		private final DoorSettings settings;

		private final Predicate<HttpServletRequest> crew;

		private final List<DoorProtocol> ports = new CopyOnWriteArrayList<>();

		private final ScheduledExecutorService sweeper = Executors.newSingleThreadScheduledExecutor(Door::thread);

		private final Supplier<@Nullable DoorAnswers> answers;

		private final Drain drain;

		Door(DoorSettings settings, Predicate<HttpServletRequest> crew, Supplier<@Nullable DoorAnswers> answers,
				Drain drain) {
			this.answers = answers;
			this.drain = drain;
			this.settings = settings;
			this.crew = crew;
			this.sweeper.scheduleWithFixedDelay(this::sweep, SWEEP, SWEEP, TimeUnit.MILLISECONDS);
		}

		@Override
		public void customize(TomcatServletWebServerFactory factory) {
			factory.setProtocol(DoorProtocol.class.getName());
			RemoteIpValve proxies = TrustedProxies.valve(this.settings.proxies());
			if (proxies != null) {
				factory.addEngineValves(proxies);
			}
			factory.addEngineValves(new DoorValve(this.settings, this.crew, this.drain));
			factory.addConnectorCustomizers((connector) -> {
				connector.setProperty("maxConnections", Integer.toString(this.settings.connections()));
				furnish(connector);
			});
			if (this.settings.crewPort() > 0) {
				factory.addAdditionalConnectors(crew());
			}
		}

		private Connector crew() {
			Connector crew = new Connector(new DoorProtocol());
			crew.setPort(this.settings.crewPort());
			crew.setProperty("maxConnections", Integer.toString(CREW_CONNECTIONS));
			furnish(crew);
			return crew;
		}

		/** Small buffers for connections that mostly say nothing. */
		private void furnish(Connector connector) {
			connector.setProperty("socket.appReadBufSize", "4096");
			connector.setProperty("socket.appWriteBufSize", "4096");
			connector.setProperty("acceptCount", "1000");
			connector.setProperty("connectionTimeout", Long.toString(this.settings.patience().toMillis()));
			connector.setProperty("keepAliveTimeout", "15000");
			if (connector.getProtocolHandler() instanceof DoorProtocol port) {
				this.ports.add(port);
				port.answerFrom(() -> this.drain.isOn() ? null : this.answers.get(), this.settings.patience());
			}
		}

		private void sweep() {
			this.ports.forEach((port) -> port.sweep(this.settings.patience()));
		}

		private static Thread thread(Runnable task) {
			Thread thread = new Thread(task, "door");
			thread.setDaemon(true);
			return thread;
		}

		@Override
		public void close() {
			this.sweeper.shutdownNow();
		}

	}

}
