package rimebook.tabulation.possible;

import java.util.List;

import rimebook.tabulation.EntryStatus;

/** The teams by index: first those on the judges' cards, then those still to skate. */
record Teams(JudgesCards cards, List<String> toSkate) {

	int size() {
		return this.cards.size() + this.toSkate.size();
	}

	int marked() {
		return this.cards.size();
	}

	int waiting() {
		return this.toSkate.size();
	}

	boolean isMarked(int team) {
		return team < marked();
	}

	String name(int team) {
		return isMarked(team) ? this.cards.team(team).entry() : this.toSkate.get(team - marked());
	}

	EntryStatus status(int team) {
		return isMarked(team) ? this.cards.team(team).status() : EntryStatus.SKATED;
	}

	int[] othersMarked(int team) {
		return java.util.stream.IntStream.range(0, marked()).filter((other) -> other != team).toArray();
	}

}
