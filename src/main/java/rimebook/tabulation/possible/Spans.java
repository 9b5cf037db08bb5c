package rimebook.tabulation.possible;

import java.util.stream.IntStream;

/**
 * The places in the segment to which each team is confined under some assumption, and a
 * place that nobody else has under it: beside a team alone on its place nobody has the
 * same, beside a shared place nobody has the next one.
 */
final class Spans {

	private final Teams teams;

	private final PairOrder order;

	private final int[] best;

	private final int[] worst;

	private int hole;

	private Spans(Teams teams, PairOrder order, int[] best, int[] worst, int hole) {
		this.teams = teams;
		this.order = order;
		this.best = best;
		this.worst = worst;
		this.hole = hole;
	}

	/** Assume nothing. */
	static Spans of(Teams teams, SegmentBounds segment) {
		return new Spans(teams, segment.order(), IntStream.range(0, teams.size()).map(segment.places()::best).toArray(),
				IntStream.range(0, teams.size()).map(segment.places()::worst).toArray(), 0);
	}

	/** Assume that a team still to skate, if it is the only one, has this finish. */
	static Spans of(Teams teams, SegmentBounds segment, int finish) {
		if (teams.waiting() > 1) {
			return of(teams, segment);
		}
		int[] best = new int[teams.size()];
		int[] worst = new int[teams.size()];
		for (int team = 0; team < teams.marked(); team++) {
			best[team] = Math.max(place(segment.ranks().best(team), finish), segment.places().best(team));
			worst[team] = Math.min(place(segment.ranks().worst(team), finish), segment.places().worst(team));
		}
		best[teams.marked()] = Finish.place(finish);
		worst[teams.marked()] = Finish.place(finish);
		return new Spans(teams, segment.order(), best, worst, hole(finish));
	}

	/** Return the place of a marked team that has a rank among the marked ones. */
	private static int place(int rank, int finish) {
		int last = Finish.place(finish);
		return (rank < last || (rank == last && Finish.isShared(finish))) ? rank : rank + 1;
	}

	private static int hole(int finish) {
		return Finish.place(finish) + (Finish.isShared(finish) ? 1 : 0);
	}

	/** Return the places a marked team may have. */
	int[] placesOf(int team) {
		return IntStream.rangeClosed(this.best[team], this.worst[team]).filter((place) -> place != this.hole).toArray();
	}

	/** Assume also that a marked team has this place. */
	Spans withPlace(int team, int place) {
		Spans spans = new Spans(this.teams, this.order, this.best.clone(), this.worst.clone(), this.hole);
		for (int other = 0; other < this.teams.marked(); other++) {
			if (other != team) {
				spans.confine(other, team, place);
			}
		}
		return spans;
	}

	private void confine(int other, int team, int place) {
		if (this.order.isAlwaysAhead(other, team)) {
			atBest(other, this.best[other], place - 1);
		}
		else if (!this.order.mayBeAhead(other, team)) {
			atBest(other, place + (this.order.isAlwaysAhead(team, other) ? 1 : 0), this.worst[other]);
		}
		if (!this.order.mayBeAhead(team, other)) {
			atBest(other, this.best[other], place);
		}
	}

	private void atBest(int team, int best, int worst) {
		this.best[team] = Math.max(this.best[team], best);
		this.worst[team] = Math.min(this.worst[team], worst);
	}

	/** Assume also that a team still to skate has this finish. */
	Spans withFinish(int finish) {
		return new Spans(this.teams, this.order, this.best, this.worst, hole(finish));
	}

	/** Whether a place is left for every marked team. */
	boolean isPossible() {
		return IntStream.range(0, this.teams.marked()).allMatch((team) -> bestOf(team) <= worstOf(team));
	}

	private int bestOf(int team) {
		return atOrBehind(team, this.best[team]);
	}

	private int worstOf(int team) {
		return isHole(team, this.worst[team]) ? this.worst[team] - 1 : this.worst[team];
	}

	private int atOrBehind(int team, int place) {
		return isHole(team, place) ? place + 1 : place;
	}

	/** The hole is there for others than the team whose finish made it. */
	private boolean isHole(int team, int place) {
		return place == this.hole && (this.teams.isMarked(team) || this.teams.waiting() > 1);
	}

	/** Count who is ahead in the event of a team with this place in the segment. */
	Ahead ahead(EventKeys keys, int team, int place) {
		Ahead ahead = new Ahead(place - 1);
		for (int rival = 0; rival < this.teams.size(); rival++) {
			if (rival != team) {
				ahead.add(before(keys, rival, place, keys.key(team, place)),
						behind(keys, rival, place, keys.key(team, place)));
			}
		}
		return ahead;
	}

	private Ahead.Side before(EventKeys keys, int rival, int place, long own) {
		int best = bestOf(rival);
		int worst = Math.min(worstOf(rival), place - 1);
		return side(keys, rival, best, isHole(rival, worst) ? worst - 1 : worst, own);
	}

	private Ahead.Side behind(EventKeys keys, int rival, int place, long own) {
		return side(keys, rival, atOrBehind(rival, Math.max(bestOf(rival), place)), worstOf(rival), own);
	}

	private static Ahead.Side side(EventKeys keys, int rival, int best, int worst, long own) {
		if (best > worst) {
			return Ahead.Side.NONE;
		}
		return new Ahead.Side(true, keys.isBetter(rival, worst, own) ? 1 : 0, keys.isBetter(rival, best, own) ? 1 : 0);
	}

}
