package rimebook.cli;

import java.util.stream.Stream;

/** A short programme of three teams, two with equal totals. */
final class PointsFixtureFiles {

	private static final String[] OPTIONS = { "--method", "points", "--elements", CliRun.file("points-elements.csv"),
			"--components", CliRun.file("points-components.csv"), "--deductions", CliRun.file("points-deductions.csv"),
			"--values", CliRun.file("points-values.csv") };

	private PointsFixtureFiles() {
	}

	/** Run a command on the files. */
	static CliRun run(String command, String... more) {
		return CliRun.of(Stream.of(new String[] { command }, OPTIONS, more).flatMap(Stream::of).toArray(String[]::new));
	}

}
