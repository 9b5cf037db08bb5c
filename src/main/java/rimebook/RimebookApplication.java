package rimebook;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Import;

import rimebook.cli.CommandLine;

/** Starts the service, or runs a command of the jar in its place. */
@SpringBootApplication
@Import(MessageFiles.class)
public class RimebookApplication {

	public static void main(String[] args) {
		if (CommandLine.isCalledBy(args)) {
			System.exit(CommandLine.ofThisJar(RimebookApplication.class).run(args));
		}
		SpringApplication.run(RimebookApplication.class, args);
	}

}
