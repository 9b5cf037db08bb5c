package rimebook.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;

import org.springframework.beans.factory.config.ConfigurableListableBeanFactory;
import org.springframework.boot.context.config.ConfigDataEnvironmentPostProcessor;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.context.LifecycleProcessor;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.context.support.AbstractApplicationContext;
import org.springframework.core.env.MapPropertySource;

import rimebook.competition.CompetitionId;

/**
 * The documents for an archive that no service makes: of the service only what reads and
 * lays out, each part made when it is asked for, on connections that may not write.
 * Nothing is migrated, nothing begins that works by itself, and nobody hears that a
 * service started, so a service may run on the database at the same time.
 */
public final class DocumentsAside implements AutoCloseable {

	private static final String INSTEAD = " With --without-documents there is an archive without them.";

	private final AnnotationConfigApplicationContext parts = new AnnotationConfigApplicationContext();

	private final Class<?> service;

	/**
	 * @param service the class that the service is started by
	 * @param url where the database is, which has the tables of this version
	 */
	public DocumentsAside(Class<?> service, String url, String user, String password) {
		this.service = service;
		this.parts.getEnvironment()
			.getPropertySources()
			.addFirst(new MapPropertySource("aside",
					Map.of("spring.datasource.url", url, "spring.datasource.username", user,
							"spring.datasource.password", password, "spring.datasource.hikari.read-only", true,
							"spring.datasource.hikari.maximum-pool-size", 2, "spring.flyway.enabled", false,
							"spring.jpa.hibernate.ddl-auto", "none")));
	}

	/** Also what a service would make at its start whatever it is asked. */
	private static void whenAskedFor(ConfigurableListableBeanFactory beans) {
		for (String name : beans.getBeanDefinitionNames()) {
			beans.getBeanDefinition(name).setLazyInit(true);
		}
	}

	/**
	 * The same order with the documents that there are now. They can be made until this
	 * is closed.
	 * @throws ArchiveRefusal if there is no such competition, or they cannot be made
	 */
	public ArchiveWriting.Order addedTo(ArchiveWriting.Order order, Connection connection) throws SQLException {
		CompetitionId competition = new CompetitionId(ArchiveWriting.competition(connection, order.competition()));
		try {
			begin();
			List<ArchivedDocument> documents = this.parts.getBeanProvider(ArchivedDocuments.class)
				.orderedStream()
				.flatMap((all) -> all.of(competition, order.variant()).stream())
				.map(DocumentsAside::refusing)
				.toList();
			return new ArchiveWriting.Order(order.competition(), order.variant(), order.now(), documents);
		}
		catch (RuntimeException ex) {
			throw refused(ex);
		}
	}

	private void begin() {
		LoggingSystem.get(DocumentsAside.class.getClassLoader()).beforeInitialize();
		ConfigDataEnvironmentPostProcessor.applyTo(this.parts.getEnvironment());
		this.parts.registerBean(AbstractApplicationContext.LIFECYCLE_PROCESSOR_BEAN_NAME, LifecycleProcessor.class,
				Idle::new);
		this.parts.addBeanFactoryPostProcessor(DocumentsAside::whenAskedFor);
		this.parts.register(this.service);
		this.parts.refresh();
	}

	private static ArchivedDocument refusing(ArchivedDocument document) {
		return new ArchivedDocument(document.name(), () -> {
			try {
				return document.content().bytes();
			}
			catch (RuntimeException ex) {
				throw refused(ex);
			}
		});
	}

	private static ArchiveRefusal refused(RuntimeException ex) {
		return new ArchiveRefusal(
				"The documents cannot be made: " + NoRoom.or(ex, String.valueOf(ex.getMessage())) + "." + INSTEAD, ex);
	}

	@Override
	public void close() {
		this.parts.close();
	}

	/** Starts and stops nothing. */
	private static final class Idle implements LifecycleProcessor {

		@Override
		public void onRefresh() {
			// What works by itself stays as it is.
		}

		@Override
		public void onClose() {
			// Nothing was started.
		}

		@Override
		public void start() {
			// As above.
		}

		@Override
		public void stop() {
			// As above.
		}

		@Override
		public boolean isRunning() {
			return false;
		}

	}

}
