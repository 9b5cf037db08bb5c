package rimebook.cli;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class CommandLineTests {

	@Test
	void serviceStartsWithoutArgumentsAndWithSettings() {
		assertThat(CommandLine.isCalledBy()).isFalse();
		assertThat(CommandLine.isCalledBy("--server.port=9090", "tabulate")).isFalse();
		assertThat(CommandLine.isCalledBy("--spring.profiles.active=demo")).isFalse();
	}

	@ParameterizedTest
	@ValueSource(strings = { "tabulate", "tabulat", "-v", "-h", "--help", "help" })
	void anythingElseCallsACommand(String first) {
		assertThat(CommandLine.isCalledBy(first, "x")).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "-h", "--help", "help" })
	void helpNamesEveryCommand(String help) {
		CliRun run = CliRun.of(help);
		assertThat(run.status()).isZero();
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).startsWith("usage: java -jar rimebook.jar COMMAND [arguments]\n")
			.contains("\n  tabulate       places from CSV files of ordinals, marks, grades or segment places\n",
					"\n  explain        the full working of one entry, or of a pair of entries\n",
					"\n  possible       places still possible, from a CSV file with rows not yet filled\n")
			.endsWith("\nCOMMAND --help tells more.\n");
	}

	@Test
	void unknownCommandIsRefusedWithTheUsage() {
		CliRun run = CliRun.of("tabulat", "--help");
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err())
			.startsWith("rimebook: there is no command 'tabulat'\nusage: java -jar rimebook.jar COMMAND");
	}

}
