package rimebook.tabulation;

import java.util.List;

/**
 * The comparison that decided between a team and those on the neighbouring place: every
 * criterion before this one was equal.
 *
 * @param rivals the teams on the neighbouring place, by identifier; more than one where
 * they share it
 * @param place the place they have
 * @param criterion what decided
 * @param own the team's value
 * @param theirs the value of each rival
 */
public record Comparison(List<String> rivals, int place, Criterion criterion, int own, int theirs) {

	public Comparison {
		rivals = List.copyOf(rivals);
	}

}
