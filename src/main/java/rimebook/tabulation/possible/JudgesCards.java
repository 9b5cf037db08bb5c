package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * The order on every judge's card and the positions that a team still to skate can take
 * in it. From the top, the teams ranked best have position 1, the next 3, 5 and so on; an
 * odd position is level with those teams, an even one lies between two of them.
 */
final class JudgesCards {

	private final List<PlacedEntry> teams;

	/** By judge, then by team. */
	private final int[][] positions;

	/** By judge, then by position: how many different cards there are for it. */
	private final int[][] room;

	/** By judge: what can be taken, best first. */
	private final int[][] open;

	private JudgesCards(List<PlacedEntry> teams, int[][] positions, int[][] room, int[][] open) {
		this.teams = teams;
		this.positions = positions;
		this.room = room;
		this.open = open;
	}

	static JudgesCards of(PlacementRules rules, SegmentStanding standing) {
		List<PlacedEntry> teams = standing.rows().stream().filter((row) -> !row.ordinals().isEmpty()).toList();
		int judges = teams.isEmpty() ? 0 : standing.judges();
		int[][] positions = new int[judges][];
		int[][] room = new int[judges][];
		int[][] open = new int[judges][];
		CardScale scale = CardScale.of(rules);
		for (int judge = 0; judge < judges; judge++) {
			positions[judge] = positions(rules, teams, judge);
			int[] roomOfJudge = room(scale, teams, positions[judge], judge);
			room[judge] = roomOfJudge;
			open[judge] = IntStream.range(0, roomOfJudge.length).filter((at) -> roomOfJudge[at] > 0).toArray();
		}
		return new JudgesCards(teams, positions, room, open);
	}

	private static int[] positions(PlacementRules rules, List<PlacedEntry> teams, int judge) {
		int[] ordinals = teams.stream().mapToInt((team) -> team.ordinals().get(judge)).toArray();
		int[] different = IntStream.of(ordinals).sorted().distinct().toArray();
		int[] positions = new int[ordinals.length];
		for (int team = 0; team < ordinals.length; team++) {
			int own = ordinals[team];
			int better = (int) IntStream.of(ordinals).filter((other) -> other < own).count();
			int level = (int) IntStream.of(ordinals).filter((other) -> other == own).count();
			if (rules.sharedOrdinals().ordinal(better, level) != own) {
				throw TabulationException.refused("incomplete-ranking",
						Sentence.of("tabulation.incomplete-ranking", judge + 1, teams.size()));
			}
			positions[team] = 2 * java.util.Arrays.binarySearch(different, own) + 1;
		}
		return positions;
	}

	/** Count the different cards that there are for each position. */
	private static int[] room(CardScale scale, List<PlacedEntry> teams, int[] positions, int judge) {
		if (teams.get(0).cards().isEmpty()) {
			return IntStream.rangeClosed(0, IntStream.of(positions).max().orElseThrow() + 1)
				.map((position) -> (position % 2 == 1) ? 1 : Integer.MAX_VALUE)
				.toArray();
		}
		List<CardMarks> cards = new ArrayList<>();
		for (int position = 1; indexOf(positions, position) >= 0; position += 2) {
			cards.add(teams.get(indexOf(positions, position)).cards().get(judge));
		}
		return IntStream.rangeClosed(0, 2 * cards.size())
			.map((position) -> (position % 2 == 1) ? 1 : room(scale, cards, position / 2))
			.toArray();
	}

	private static int room(CardScale scale, List<CardMarks> cards, int gap) {
		if (gap == 0) {
			return scale.above(cards.get(0));
		}
		return (gap == cards.size()) ? scale.below(cards.get(gap - 1))
				: scale.between(cards.get(gap - 1), cards.get(gap));
	}

	private static int indexOf(int[] values, int value) {
		return IntStream.range(0, values.length).filter((i) -> values[i] == value).findFirst().orElse(-1);
	}

	int judges() {
		return this.positions.length;
	}

	/** How many teams are on the cards. */
	int size() {
		return this.teams.size();
	}

	PlacedEntry team(int team) {
		return this.teams.get(team);
	}

	int position(int judge, int team) {
		return this.positions[judge][team];
	}

	/** Positions that a team can take on a judge's card, best first. */
	int[] open(int judge) {
		return this.open[judge];
	}

	/** Whether so many teams find room there one behind the other on every card. */
	boolean hasRoom(int[] block, int teams) {
		return IntStream.range(0, block.length).allMatch((judge) -> this.room[judge][block[judge]] >= teams);
	}

	int[] best() {
		return IntStream.range(0, judges()).map((judge) -> this.open[judge][0]).toArray();
	}

	int[] worst() {
		return IntStream.range(0, judges()).map((judge) -> this.open[judge][this.open[judge].length - 1]).toArray();
	}

	/** Whether a team can be behind all others on every card. */
	boolean isRoomBelow() {
		return IntStream.of(worst()).allMatch((position) -> position % 2 == 0);
	}

	int better(int judge, int position) {
		return (int) IntStream.of(this.positions[judge]).filter((other) -> other < position).count();
	}

	int level(int judge, int position) {
		return (int) IntStream.of(this.positions[judge]).filter((other) -> other == position).count();
	}

}
