package rimebook.rehearsal;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import rimebook.RimebookApplication;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;

/** A rehearsal that is begun by a command, from a file; its starter is killed. */
class ConsoleRehearsalIntegrationTests {

	private static final Path ARCHIVE = Path.of("src", "test", "resources", "archive", "layout-1.zip");

	@TempDir
	private Path temporary;

	@Test
	void aRehearsalEndsWithItsStarterHoweverThatEnds() throws Exception {
		Process starter = new ProcessBuilder("java", "-XX:TieredStopAtLevel=1", "-Djava.io.tmpdir=" + this.temporary,
				"-cp", System.getProperty("java.class.path"), RimebookApplication.class.getName(), "rehearse",
				ARCHIVE.toString(), "--port", "18090")
			.redirectErrorStream(true)
			.start();
		List<ProcessHandle> rehearsal = new ArrayList<>();
		try (BufferedReader said = starter.inputReader()) {
			List<String> words = new ArrayList<>();
			for (String line = said.readLine(); line != null; line = said.readLine()) {
				words.add(line);
				if (line.startsWith("Press Enter")) {
					break;
				}
			}
			assertThat(words).as("what it said").hasSize(4);
			int port = Integer.parseInt(words.get(0).replaceAll(".*localhost:(\\d+)/.*", "$1"));
			String password = words.get(1).replaceAll(".* ", "");
			Visitor crew = Visitor.signedIn(port, "rehearsal-announcer", password);
			assertThat(crew.open("/desk").text()).contains("Rehearsal Nothing here counts");
			rehearsal.addAll(starter.descendants().toList());
			assertThat(rehearsal).isNotEmpty();
			assertThat(left()).isNotEmpty();
		}
		finally {
			starter.destroyForcibly().waitFor();
		}
		Awaitility.await()
			.atMost(Duration.ofSeconds(60))
			.until(() -> rehearsal.stream().noneMatch(ProcessHandle::isAlive));
		assertThat(left()).isEmpty();
	}

	private List<Path> left() throws IOException {
		try (Stream<Path> all = Files.walk(this.temporary)) {
			return all.filter((file) -> file.toString().contains("rimebook-rehearsal")).toList();
		}
	}

}
