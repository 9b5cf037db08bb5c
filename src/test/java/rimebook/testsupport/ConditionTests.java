package rimebook.testsupport;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

class ConditionTests {

	private final String chromium = Chromium.executable().toString();

	@TempDir
	private Path directory;

	@AfterEach
	void namesTheBrowserOfThisMachineAgain() {
		System.setProperty("rimebook.chromium", this.chromium);
	}

	@Test
	void skipsWhereNoEngineAnswersAndSaysWhereItLooked() {
		URI nowhere = URI.create("unix://" + this.directory.resolve("none.sock"));
		ConditionEvaluationResult result = evaluate(new DockerCondition(new DockerEngine(List.of(nowhere))));
		assertThat(result.isDisabled()).isTrue();
		assertThat(result.getReason()).hasValue("no Docker engine answers at " + nowhere);
	}

	@Test
	void skipsWhereThereIsNoBrowserAndSaysHowToNameOne() {
		Path missing = this.directory.resolve("chromium");
		System.setProperty("rimebook.chromium", missing.toString());
		ConditionEvaluationResult result = evaluate(new ChromiumCondition());
		assertThat(result.isDisabled()).isTrue();
		assertThat(result.getReason().orElseThrow()).contains(missing.toString(), "-Drimebook.chromium");
	}

	@Test
	void runsWhereTheNamedBrowserCanBeStarted() throws Exception {
		Path browser = Files.createFile(this.directory.resolve("chromium"));
		System.setProperty("rimebook.chromium", browser.toString());
		assertThat(evaluate(new ChromiumCondition()).isDisabled()).as("a file that cannot be run").isTrue();
		assertThat(browser.toFile().setExecutable(true)).isTrue();
		assertThat(evaluate(new ChromiumCondition()).isDisabled()).isFalse();
	}

	private static ConditionEvaluationResult evaluate(ExecutionCondition condition) {
		return condition.evaluateExecutionCondition(mock(ExtensionContext.class));
	}

}
