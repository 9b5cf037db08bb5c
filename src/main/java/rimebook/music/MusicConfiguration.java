package rimebook.music;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.KeptUntilTheDay;
import rimebook.pages.DeskEntry;
import rimebook.shared.KeptFolder;

/**
 * Where music lies: beside a database that is a file, so that copies of the database stay
 * small; else in the database, which is all that several nodes share.
 */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(MusicSettings.class)
class MusicConfiguration {

	private static final Pattern FILE = Pattern.compile("jdbc:h2:(?:file:)?(?!mem:|tcp:|ssl:|zip:|nio)([^;]+).*");

	@Bean
	MusicStore musicStore(Environment environment, ObjectProvider<JdbcClient> database) {
		return folder(environment).<MusicStore>map((folder) -> new FolderStore(folder.path()))
			.orElseGet(() -> new ChunkStore(database.getObject()));
	}

	@Bean
	KeptFolder.Source musicFolder(Environment environment) {
		return () -> folder(environment);
	}

	/** Empty for a database that is no file of this machine. */
	static Optional<KeptFolder> folder(Environment environment) {
		Matcher file = FILE.matcher(environment.getProperty("spring.datasource.url", ""));
		return file.matches() ? Optional
			.of(KeptFolder.ofMusic(Path.of(file.group(1).replaceFirst("^~", System.getProperty("user.home")))
				.toAbsolutePath()
				.normalize())) : Optional.empty();
	}

	@Bean
	KeptUntilTheDay musicUntilTheDay(MusicRetention retention) {
		return retention::delete;
	}

	@Bean
	DeskEntry musicDeskEntry() {
		return new DeskEntry(52, "/desk/music", "music");
	}

}
