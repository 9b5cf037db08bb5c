package rimebook.rehearsal;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

/** How the process of a rehearsal is started. */
class JavaMachineTests {

	@TempDir
	private Path folder;

	@Test
	void aJarThatStartsByItselfIsStartedSo() throws IOException {
		Path jar = jar("rimebook.RimebookApplication");
		assertThat(JavaMachine.program(jar.toString())).isEqualTo(List.of("-jar", jar.toString()));
	}

	/** As a tool for builds starts it: one jar that only names all others. */
	@Test
	void anyOtherClassPathIsTakenOver() throws IOException {
		Path jar = jar("");
		assertThat(JavaMachine.program(jar.toString()))
			.isEqualTo(List.of("-cp", jar.toString(), "rimebook.RimebookApplication"));
		assertThat(JavaMachine.program("target/classes" + File.pathSeparator + jar)).isEqualTo(List.of("-cp",
				Path.of("target/classes").toAbsolutePath() + File.pathSeparator + jar, "rimebook.RimebookApplication"));
	}

	@Test
	void aPortThatIsTakenIsPassedOver() throws IOException {
		try (ServerSocket taken = new ServerSocket(0)) {
			int port = taken.getLocalPort();
			assertThat(new RehearsalSettings(port, Duration.ofHours(1), 256).freePort(8080)).isGreaterThan(port);
			assertThat(new RehearsalSettings(0, Duration.ofHours(1), 256).freePort(port - 10)).isGreaterThan(port);
		}
	}

	@Test
	void thisMachineSaysHowMuchMemoryItHasLeft() {
		assertThat(FreeMemory.megabytes()).isBetween(1L, 1L << 30);
	}

	private Path jar(String starts) throws IOException {
		Manifest manifest = new Manifest();
		manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
		manifest.getMainAttributes().putValue("Start-Class", starts);
		Path jar = this.folder.resolve("rimebook.jar");
		try (OutputStream file = Files.newOutputStream(jar);
				JarOutputStream written = new JarOutputStream(file, manifest)) {
			written.finish();
		}
		return jar;
	}

}
