package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;

import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationListener;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;

import rimebook.archive.ArchiveDatabase;
import rimebook.archive.ArchiveRestore;
import rimebook.shared.Actor;

/**
 * The process of a rehearsal: the copy is restored before anything opens the database.
 */
@Configuration(proxyBeanMethods = false)
@Profile(RehearsalMark.PROFILE)
@ConditionalOnProperty(HereConfiguration.ARCHIVE)
@WithSimulatedPanel
@Import({ HerePlan.class, HereCrew.class })
class HereConfiguration {

	static final String ARCHIVE = "rimebook.rehearsal.archive";

	private static final String FOLDER = "rimebook.rehearsal.folder";

	private static final Duration PACE = Duration.ofSeconds(20);

	@Bean
	static BeanFactoryPostProcessor restored(Environment environment) {
		return (beans) -> {
			Lifeline.hold(Path.of(environment.getRequiredProperty(FOLDER)));
			try {
				restore(environment);
			}
			catch (IOException | SQLException ex) {
				throw new IllegalStateException("The copy for the rehearsal could not be restored", ex);
			}
		};
	}

	private static void restore(Environment environment) throws IOException, SQLException {
		String url = environment.getRequiredProperty("spring.datasource.url");
		String user = environment.getProperty("spring.datasource.username", "");
		String password = environment.getProperty("spring.datasource.password", "");
		Path archive = Path.of(environment.getRequiredProperty(ARCHIVE));
		ArchiveDatabase.prepare(url, user, password);
		try (Connection connection = DriverManager.getConnection(url, user, password)) {
			ArchiveRestore.restore(connection, archive);
		}
		Files.delete(archive);
	}

	@Bean
	static PanelCast simulatedCrew() {
		return new PanelCast(new Actor("Simulated referee", "referee", "rehearsal"),
				new Actor("Simulated technical panel", "technical", "rehearsal"));
	}

	/** The crew begins; the panel waits until somebody lets it go. */
	@Bean(destroyMethod = "stop")
	PanelRunner panelRunner(SimulatedPanel panel, HerePlan plan) {
		return new PanelRunner(panel, plan::prepare, true, PACE, PanelRunner.Mode.PAUSED);
	}

	/** Whoever started the process waits for this. */
	@Bean
	ApplicationListener<ApplicationReadyEvent> ready(PanelRunner panel, HerePlan plan, Environment environment) {
		return (event) -> {
			plan.issueCodes();
			panel.start();
			System.out.println(RehearsalProcess.READY + environment.getProperty("local.server.port"));
		};
	}

}
