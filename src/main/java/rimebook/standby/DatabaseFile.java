package rimebook.standby;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.springframework.core.env.Environment;

import rimebook.shared.KeptFolder;

/**
 * The H2 file that the settings name.
 *
 * @param path the file itself
 */
record DatabaseFile(Path path, CopyCheck access) {

	private static final Pattern FILE = Pattern.compile("jdbc:h2:(?:file:)?(?!mem:|tcp:|ssl:|zip:|nio)([^;]+).*");

	/** Empty for a database that is no file of this machine. */
	static Optional<DatabaseFile> of(Environment environment) {
		Matcher file = FILE.matcher(environment.getProperty("spring.datasource.url", ""));
		if (!file.matches()) {
			return Optional.empty();
		}
		Path name = Path.of(file.group(1).replaceFirst("^~", System.getProperty("user.home"))).toAbsolutePath();
		CopyCheck access = new CopyCheck(environment.getProperty("spring.datasource.username", ""),
				environment.getProperty("spring.datasource.password", ""));
		return Optional
			.of(new DatabaseFile(name.normalize().resolveSibling(name.getFileName() + CopyCheck.FILE), access));
	}

	/** A file beside it, such as {@code rimebook.restoring.mv.db}. */
	Path beside(String word) {
		String name = this.path.getFileName().toString();
		return this.path
			.resolveSibling(name.substring(0, name.length() - CopyCheck.FILE.length()) + "." + word + CopyCheck.FILE);
	}

	/** The same under another name. */
	DatabaseFile called(String word) {
		return new DatabaseFile(beside(word), this.access);
	}

	/** Where music lies beside it. */
	KeptFolder music() {
		String name = this.path.getFileName().toString();
		return KeptFolder.ofMusic(this.path.resolveSibling(name.substring(0, name.length() - CopyCheck.FILE.length())));
	}

	Path folder() {
		return this.path.resolveSibling("");
	}

}
