package rimebook.stand.web;

import java.util.List;

import rimebook.performances.StandingAfterCards.Line;
import rimebook.performances.StandingAfterCards.Placed;

/** The standing that the cards closed so far have made. */
record StandingPart(int skated, int starters, List<Line> lines) implements LivePart {

	static final StandingPart NONE = new StandingPart(0, 0, List.of());

	static StandingPart of(Placed placed) {
		return new StandingPart(placed.skated(), placed.starters(), placed.lines());
	}

}
