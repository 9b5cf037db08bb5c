package rimebook.tabulation.possible;

/**
 * Bounds of the places in the segment: nobody can be better or worse than they say. A
 * rank is the place among the teams marked so far only.
 *
 * @param order of every two marked teams
 * @param ranks of the marked teams
 * @param places of all teams
 */
record SegmentBounds(PairOrder order, Extremes ranks, Extremes places) {

	/**
	 * For one team still to skate, whose places are known from its best and worst cards.
	 */
	static SegmentBounds ofOne(Teams teams, Searches searches, Reached reached) {
		Extremes ranks = new Extremes(teams.marked());
		Extremes places = new Extremes(teams.size());
		for (int team = 0; team < teams.marked(); team++) {
			Searches.Ahead fewest = searches.all(team, true);
			Searches.Ahead most = searches.all(team, false);
			ranks.note(team, fewest.marked() + 1, most.marked() + 1);
			places.note(team, 1 + fewest.total(), 1 + most.total());
		}
		int last = teams.marked();
		places.note(last, reached.segment().best(last), reached.segment().worst(last));
		return new SegmentBounds(PairOrder.searched(searches, teams.marked()), ranks, places);
	}

	/**
	 * For several teams still to skate, each for itself; what they can reach is searched
	 * together.
	 */
	static SegmentBounds ofSeveral(Teams teams, RankKeys keys, Searches searches, Reached reached) {
		PairOrder order = PairOrder.bounded(keys, teams.marked());
		Extremes ranks = new Extremes(teams.marked());
		Extremes places = new Extremes(teams.size());
		if (teams.cards().isRoomBelow()) {
			reached.noteLastPlace();
		}
		for (int team = 0; team < teams.size(); team++) {
			if (teams.isMarked(team)) {
				ranks.note(team, order.alwaysAheadOf(team) + 1, order.mayBeAheadOf(team) + 1);
				places.note(team, ranks.best(team), ranks.worst(team) + teams.waiting());
				searches.all(team, true);
				searches.all(team, false);
			}
			else {
				places.note(team, 1, teams.size());
			}
		}
		return new SegmentBounds(order, ranks, places);
	}

}
