package rimebook.standby;

import java.nio.file.Path;
import java.time.Clock;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;

/** What {@code --from-copy=FOLDER} does, before anything opens the database. */
@Configuration(proxyBeanMethods = false)
class FromCopyConfiguration {

	private static final Log log = LogFactory.getLog(FromCopyConfiguration.class);

	@Bean
	static BeanFactoryPostProcessor databaseFromCopy(Environment environment) {
		return (beans) -> {
			String folder = environment.getProperty("from-copy", "");
			if (!folder.isBlank()) {
				start(Path.of(folder).toAbsolutePath(), environment).sentences().forEach(log::warn);
			}
		};
	}

	private static StartedFromCopy start(Path folder, Environment environment) {
		DatabaseFile database = DatabaseFile.of(environment).orElseThrow(CopyRefusedException::noFile);
		boolean inPlace = environment.getProperty("from-copy-in-place-of", "")
			.equals(database.path().getFileName().toString());
		return new StartFromCopy(new CopyFolder(folder), database, inPlace, Clock.systemUTC()).run();
	}

}
