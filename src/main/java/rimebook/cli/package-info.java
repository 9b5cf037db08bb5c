/**
 * The sub-commands of the jar: work at a console without the pages, and where possible
 * without starting the service. A new one is a {@code SubCommand} named in
 * {@link rimebook.cli.CommandLine}.
 */
@ApplicationModule(allowedDependencies = { "tabulation", "tabulation :: points", "tabulation :: possible", "audit",
		"archive", "rehearsal", "shared", "wording" })
@NullMarked
package rimebook.cli;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
