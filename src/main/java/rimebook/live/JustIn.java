package rimebook.live;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.wording.Sentence;

/**
 * The team that was marked last: what it was given and what that changed. Told until the
 * next team is marked or the result is posted.
 *
 * @param line as published, with what each judge gave
 * @param changed what became of the standing by it, {@link Sentence#NONE} where it has no
 * place
 */
record JustIn(StandingTable.Line line, Sentence changed) {

	private static final int FIRST = 1;

	/**
	 * Tell of a team.
	 * @param entry the entry that was marked last, {@code null} for none
	 * @param table the segment's newest standing
	 * @param claim the standing that people mean
	 */
	static @Nullable JustIn of(@Nullable String entry, StandingTable table, Claim claim) {
		return table.lines()
			.stream()
			.filter((line) -> line.row().entry().equals(entry))
			.findFirst()
			.map((line) -> new JustIn(line, changed(entry, claim)))
			.orElse(null);
	}

	private static Sentence changed(@Nullable String entry, Claim claim) {
		List<Standing.Row> placed = claim.placed();
		for (int at = 0; at < placed.size(); at++) {
			if (placed.get(at).entry().equals(entry)) {
				return changed(placed, at, claim);
			}
		}
		return Sentence.NONE;
	}

	private static Sentence changed(List<Standing.Row> placed, int at, Claim claim) {
		Standing.Row own = placed.get(at);
		int place = Objects.requireNonNull(own.place());
		List<String> sharing = names(placed, place, own);
		if (!sharing.isEmpty()) {
			return Sentence.of(claim.key("headline.in.shares"), own.team(), place, sharing);
		}
		List<String> behind = names(placed, (at > 0) ? Objects.requireNonNull(placed.get(at - 1).place()) : 0, own);
		List<String> ahead = names(placed,
				(at + 1 < placed.size()) ? Objects.requireNonNull(placed.get(at + 1).place()) : 0, own);
		if (place == FIRST) {
			return first(own, ahead, placed, claim);
		}
		return ahead.isEmpty() ? Sentence.of(claim.key("headline.in.last"), own.team(), place, behind)
				: Sentence.of(claim.key("headline.in.between"), own.team(), place, behind, ahead);
	}

	private static Sentence first(Standing.Row own, List<String> ahead, List<Standing.Row> placed, Claim claim) {
		List<String> before = Headline
			.names(placed.stream().filter((row) -> row != own && Objects.equals(row.previousPlace(), FIRST)).toList());
		if (!before.isEmpty()) {
			return Sentence.of(claim.key("headline.in.takes-lead"), own.team(), before);
		}
		return ahead.isEmpty() ? Sentence.of(claim.key("headline.in.alone"), own.team())
				: Sentence.of(claim.key("headline.in.leads"), own.team(), ahead);
	}

	private static List<String> names(List<Standing.Row> placed, int place, Standing.Row but) {
		return Headline
			.names(placed.stream().filter((row) -> row != but && Objects.equals(row.place(), place)).toList());
	}

	/** How a team came through, as a part of a key. */
	static String word(String status) {
		return status.toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** The entry's identity. */
	public String entry() {
		return this.line.row().entry();
	}

}
