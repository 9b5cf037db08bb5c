package rimebook.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;

import rimebook.RimebookApplication;

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
			.contains("\n  tabulate        places from CSV files of ordinals, marks, grades or segment places\n",
					"\n  explain         the full working of one entry, or of a pair of entries\n",
					"\n  possible        places still possible, from a CSV file with rows not yet filled\n")
			.endsWith("\nCOMMAND --help tells more.\n");
	}

	@ParameterizedTest
	@ValueSource(strings = { "tabulate", "explain", "possible", "verify-record", "record-key", "archive",
			"verify-archive", "restore", "rehearse", "completion" })
	void everyCommandTellsItsUsageByEitherOption(String command) {
		CliRun run = CliRun.of(command, "-h");
		assertThat(run.status()).isZero();
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).startsWith("usage: java -jar rimebook.jar " + command);
		assertThat(run).isEqualTo(CliRun.of(command, "whatever", "--help"));
	}

	@Test
	void anAnswerThatCannotBeWrittenIsARefusal() {
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = CommandLine.ofThisJar(RimebookApplication.class)
			.run(List.of("tabulate", "--method", "majority", CliRun.file("ordinals.csv")),
					new PrintStream(new FullDisk()), new PrintStream(err));
		assertThat(status).isEqualTo(2);
		assertThat(err.toString()).isEqualTo(
				"rimebook: the answer could not be written whole; is the disk full, or was its reader closed?\n");
	}

	@Test
	void wantOfMemoryIsTold() {
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = new CommandLine(List.of(new Hungry())).run(List.of("hungry"),
				new PrintStream(OutputStream.nullOutputStream()), new PrintStream(err));
		assertThat(status).isEqualTo(2);
		assertThat(err.toString()).isEqualTo("rimebook hungry: there is not enough memory for this input. Give Java "
				+ "more, as in java -Xmx2g -jar rimebook.jar, or split the file.\n");
	}

	@Test
	void unknownCommandIsRefusedWithTheUsage() {
		CliRun run = CliRun.of("tabulat", "--help");
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err())
			.startsWith("rimebook: there is no command 'tabulat'\nusage: java -jar rimebook.jar COMMAND");
	}

	@Test
	void aShellCompletesCommandsOptionsAndWords() {
		CliRun run = CliRun.of("completion");
		assertThat(run.status()).isZero();
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).startsWith("#!").contains("verify-record", "--shared-ordinals", "one-by-one");
		assertThat(CliRun.of("completion", "zsh").err())
			.startsWith("rimebook completion: there is nothing to do with 'zsh'\nusage: ");
	}

	@Test
	void aFileMayHaveANameThatLooksLikeAnOptionOrAList() {
		assertThat(CliRun.of("tabulate", "--method", "majority", "--", "-x.csv"))
			.isEqualTo(new CliRun(2, "", "-x.csv: there is no such file\n"));
		assertThat(CliRun.of("tabulate", "--method", "majority", "@" + CliRun.file("ordinals.csv")).err())
			.endsWith("ordinals.csv: there is no such file\n");
	}

	private static final class FullDisk extends OutputStream {

		@Override
		public void write(int octet) throws IOException {
			throw new IOException("No space left on device");
		}

	}

	private static final class Hungry implements SubCommand {

		@Override
		public String name() {
			return "hungry";
		}

		@Override
		public CommandSpec spec() {
			return CommandSpec.create().name(name());
		}

		@Override
		public int run(Arguments typed, PrintStream out, PrintStream err) {
			throw new OutOfMemoryError("Java heap space");
		}

	}

}
