package rimebook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

/** Any bytes end in places or in a refusal with its position, never in anything else. */
class AbsurdFileTests {

	private static final int FILES = 4_000;

	private static final int SETS = 1_000;

	private static final String[] PIECES = { "entry", "J1", "J2", "J3", "J1 first", "J1 second", "place1", "place2",
			",", ",", ",", "\n", "\n", "\r\n", "\r", "\"", "\"\"", " ", "\t", "\u000B", "\u00A0", "\uFEFF", "\u0000",
			"1", "2", "3", "0", "5.5", "A", "B", "é", "😀", "#", ";" };

	private static final String[] STARTS = { "", "entry,J1\n", "entry,J1,J2,J3\nA,1,1,", "entry,J1 first,J1 second\nA,",
			"entry,place1,place2\nA,1,", "entry,J1\n\"" };

	private static final String[] POINTS_FILES = { "elements", "components", "deductions", "values" };

	private static final String[] UNFILLED = { "", "\nZ,", "\nZ,,", "\nZ,,,", "\nZ,\nY," };

	@TempDir
	private Path folder;

	private final Random random = new Random(1_998);

	@Test
	void everyFileEndsInPlacesOrARefusalWithItsPosition() throws IOException {
		Path file = this.folder.resolve("absurd.csv");
		int tabulated = 0;
		for (int i = 0; i < FILES; i++) {
			Files.write(file, text().getBytes(StandardCharsets.UTF_8));
			tabulated += check(CliRun.of("tabulate", "--method", "one-by-one", "--segment", "short", file.toString()),
					file);
			tabulated += check(CliRun.of("tabulate", "--combine", file.toString()), file);
		}
		assertThat(tabulated).isGreaterThan(FILES / 50);
	}

	@Test
	void everyFileOfASegmentUnderWayEndsInAnAnswerOrARefusal() throws IOException {
		Path file = this.folder.resolve("absurd.csv");
		int answered = 0;
		for (int i = 0; i < FILES / 4; i++) {
			Files.write(file, (text() + pick(UNFILLED)).getBytes(StandardCharsets.UTF_8));
			CliRun run = CliRun.of("possible", "--method", "majority", "--segment", "short", file.toString());
			boolean done = run.status() == 0 && run.out().startsWith("entry,scope,");
			boolean refused = run.status() == 2 && run.out().isEmpty()
					&& run.err().matches("(?s).*absurd.csv:line \\d+, column \\d+: .{20,}\n");
			assertThat(done || refused).as(run.toString()).isTrue();
			answered += done ? 1 : 0;
		}
		assertThat(answered).isGreaterThan(FILES / 400);
	}

	/** One of the four files of points judging is spoilt at a few places. */
	@Test
	void everySetOfPointsFilesEndsInPlacesOrARefusal() throws IOException {
		int tabulated = 0;
		for (int i = 0; i < SETS; i++) {
			String spoilt = pick(POINTS_FILES);
			for (String name : POINTS_FILES) {
				String text = CliRun.content("points-" + name + ".csv");
				Files.write(this.folder.resolve(name),
						(name.equals(spoilt) ? spoilt(text) : text).getBytes(StandardCharsets.UTF_8));
			}
			CliRun run = CliRun.of("tabulate", "--method", "points", "--detail", "--elements", path("elements"),
					"--components", path("components"), "--deductions", path("deductions"), "--values", path("values"));
			boolean done = run.status() == 0 && run.out().startsWith("place,entry,total,");
			boolean refused = run.status() == 2 && run.out().isEmpty() && run.err()
				.matches("(?s).*(elements|components|deductions|values):line \\d+, column \\d+: .{20,}\n");
			assertThat(done || refused).as(run.toString()).isTrue();
			tabulated += done ? 1 : 0;
		}
		assertThat(tabulated).isBetween(SETS / 50, SETS * 49 / 50);
	}

	private String path(String name) {
		return this.folder.resolve(name).toString();
	}

	private String spoilt(String text) {
		StringBuilder spoilt = new StringBuilder(text);
		for (int changes = this.random.nextInt(3); changes >= 0; changes--) {
			int at = this.random.nextInt(spoilt.length());
			spoilt.replace(at, Math.min(spoilt.length(), at + this.random.nextInt(3)), pick(PIECES));
		}
		return spoilt.toString();
	}

	private static int check(CliRun run, Path file) {
		if (run.status() == 0) {
			assertThat(run.out()).startsWith("place,entry,");
			return 1;
		}
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err().replace(file.toString(), "FILE"))
			.matches("(?s)FILE:line [1-9]\\d*, column [1-9]\\d*: .*; expected .*\n");
		return 0;
	}

	private String text() {
		StringBuilder text = new StringBuilder(pick(STARTS));
		for (int length = this.random.nextInt(12); length > 0; length--) {
			text.append(pick(PIECES));
		}
		return text.toString();
	}

	private String pick(String[] from) {
		return from[this.random.nextInt(from.length)];
	}

}
