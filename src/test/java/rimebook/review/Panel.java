package rimebook.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.jspecify.annotations.Nullable;

/** Marks of a panel, each judge given by what it gave team after team. */
final class Panel {

	private Panel() {
	}

	/** One thing a team; each judge gave the teams these, {@code null} for nothing. */
	@SafeVarargs
	static List<MarkLine> of(List<@Nullable Integer>... judges) {
		List<MarkLine> lines = new ArrayList<>();
		for (int team = 0; team < judges[0].size(); team++) {
			List<@Nullable Integer> given = new ArrayList<>();
			for (List<@Nullable Integer> judge : judges) {
				given.add(judge.get(team));
			}
			lines.add(line("Team " + (char) ('A' + team), "", given));
		}
		return lines;
	}

	static MarkLine line(String team, String item, List<@Nullable Integer> given) {
		return new MarkLine(new MarkLine.Team(team, 1, team), item, given);
	}

	static List<@Nullable Integer> gave(@Nullable Integer... marks) {
		return Arrays.asList(marks);
	}

}
