package rimebook.standby;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * The second place.
 *
 * @param folder where copies are kept: a stick, a share, another disk; empty for none
 * @param elsewhere whether something else keeps copies, such as PostgreSQL's own tools,
 * so that nobody needs to be told that there is no folder
 * @param every how long after one whole copy the next is begun, if anything was done
 * @param look how often what was done since is written there
 */
@ConfigurationProperties("rimebook.copy")
record CopySettings(@DefaultValue("") String folder, @DefaultValue("false") boolean elsewhere,
		@DefaultValue("30s") Duration every, @DefaultValue("3s") Duration look) {

	Optional<Path> place() {
		return this.folder.isBlank() ? Optional.empty() : Optional.of(Path.of(this.folder.strip()).toAbsolutePath());
	}

}
