package rimebook.tabulation.possible;

import java.util.List;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EntryStatus;

/**
 * Tells which places can still be reached in a segment under way, and in the event if
 * that is its last segment. Every team still to skate is taken to skate and to be marked;
 * every judge may rank it anywhere in his order, also level with earlier teams, as long
 * as there are marks for it.
 *
 * <p>
 * Every answer has two sides. A bound is proved: nobody can do better, or worse. A place
 * reached is one that really comes up when the segment is tabulated with certain cards.
 * Where both agree the answer is exact; where they do not, the bound is given and marked
 * as one. How much is searched is counted in steps and not timed, so the same question
 * always has the same answer.
 *
 * <p>
 * One team to skate, a small panel. Where the judges can place it in no more than a few
 * thousand ways together, all of them are tried, and every answer is exact.
 *
 * <p>
 * One team to skate, the segment. A better position of that team on a judge's card never
 * helps anybody else and never harms itself. So its own best and worst place come from
 * its best and worst cards. For a marked team, only two or three positions on each card
 * need to be tried: where the last team leaves it in peace but presses as many others as
 * it can, and where it passes it and presses everybody (for the worst place: the other
 * way round). The search goes through these judge by judge and turns back where even the
 * most favourable rest, taken for each team by itself, brings nothing better. Whether the
 * last team itself ends up ahead is settled by a second search over all positions, where
 * the first has not settled it.
 *
 * <p>
 * One team to skate, the event. The places of several teams matter together there. For
 * every finish of the last team and every place of the team in question, others are
 * confined to the places which that finish, the bounds in the segment and the order of
 * each pair (searched as above) leave them. As many teams as the place says are before it
 * in the segment; those who may be before or behind are divided in the way that suits
 * best. Counting who is then ahead in the event at any rate, and who may be, gives the
 * bounds. What is reached comes from all cards that the searches hit on and from cards on
 * which the last team is just before, level with or just behind an earlier team, varied
 * judge by judge and, for the questions still open, mixed in a fixed sequence.
 *
 * <p>
 * Several teams to skate. Two marked teams keep their order if one cannot keep up with
 * the other: under majority, if there is no place for which it can have a majority of
 * judges while the other has none for any better one (a judge who ranks it behind the
 * other can grant only one of the two); under one-by-one, if the wins and judges in
 * favour that the others can bring it are too few. Counting these gives bounds; what is
 * reached comes from cards on which all teams still to skate stand together, level or one
 * behind the other in several orders.
 *
 * <p>
 * What a team needs: for each finish in the segment, alone or shared, the bounds of its
 * place in the event, read from the best finish downwards.
 */
public final class StillPossible {

	/** How many ways of placing the last team are few enough to try them all. */
	private static final int MOST_TRIED = 5_000;

	private final Teams teams;

	private final RankKeys keys;

	private final @Nullable EventKeys events;

	private final Reached reached;

	private final Bounds bounds;

	private StillPossible(SegmentUnderWay underWay, int mostTried) {
		this.teams = new Teams(JudgesCards.of(underWay.rules(), underWay.standing()), underWay.toSkate());
		this.keys = RankKeys.of(underWay.rules(), this.teams.cards(), this.teams.waiting());
		SegmentUnderWay.EarlierSegments earlier = underWay.earlier();
		this.events = (earlier != null) ? EventKeys.of(earlier, this.teams) : null;
		this.reached = new Reached(this.teams, this.keys, this.events);
		this.bounds = search(new Probes(this.teams.cards(), this.reached), mostTried);
	}

	/**
	 * Look at a segment.
	 * @param underWay the segment and what was skated before
	 * @return the places that can still be reached
	 * @throws rimebook.tabulation.TabulationException {@code incomplete-ranking}: the
	 * standing was made from ordinals that do not rank the teams marked so far;
	 * {@code other-rules}: it was made with another rule set
	 */
	public static PossiblePlaces of(SegmentUnderWay underWay) {
		return of(underWay, MOST_TRIED);
	}

	static PossiblePlaces of(SegmentUnderWay underWay, int mostTried) {
		return new StillPossible(underWay, mostTried).places();
	}

	private Bounds search(Probes probes, int mostTried) {
		if (this.teams.waiting() == 1 && probes.canTryAll(mostTried)) {
			probes.all();
			return Bounds.reached(this.reached);
		}
		probes.some(this.events != null);
		Bounds proved = Bounds.proved(this.teams, this.keys, this.events, this.reached);
		probes.mix(IntStream.range(0, this.teams.marked()).filter((team) -> isOpen(proved, team)).toArray());
		return proved;
	}

	/** Whether it is not known if a team can really reach its bounds. */
	private boolean isOpen(Bounds proved, int team) {
		return !range(proved.segment(), this.reached.segment(), team).isExact()
				|| (competes(team) && !range(proved.event(), this.reached.event(), team).isExact());
	}

	private boolean competes(int team) {
		return this.events != null && this.events.competes(team);
	}

	private static PossiblePlaces.PlaceRange range(Extremes bounds, Extremes reached, int team) {
		return PossiblePlaces.PlaceRange.of(bounds.best(team), reached.best(team), bounds.worst(team),
				reached.worst(team));
	}

	private PossiblePlaces places() {
		return new PossiblePlaces(
				IntStream.range(0, this.teams.size())
					.filter((team) -> this.teams.status(team) == EntryStatus.SKATED)
					.mapToObj(this::outlook)
					.toList(),
				IntStream.range(this.teams.marked(), this.teams.size())
					.filter(this::competes)
					.mapToObj(this::needs)
					.flatMap(List::stream)
					.toList());
	}

	private PossiblePlaces.Outlook outlook(int team) {
		return new PossiblePlaces.Outlook(this.teams.name(team), this.teams.isMarked(team),
				range(this.bounds.segment(), this.reached.segment(), team),
				competes(team) ? range(this.bounds.event(), this.reached.event(), team) : null);
	}

	private List<PossiblePlaces.PlaceNeed> needs(int team) {
		Extremes inSegment = this.bounds.segment();
		int[] finishes = Finish.between(inSegment.best(team), inSegment.worst(team), this.teams.size());
		return new Needs(this.teams.name(team), this.bounds.byFinish()[team - this.teams.marked()],
				this.reached.byFinish()[team - this.teams.marked()], finishes, this.teams.size())
			.upTo(this.bounds.event().worst(team));
	}

}
