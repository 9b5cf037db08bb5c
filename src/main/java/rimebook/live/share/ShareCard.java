package rimebook.live.share;

import java.util.List;

/**
 * What the picture of a standing says. Two equal cards are the same picture.
 *
 * @param competition whose it is
 * @param what event and segment
 * @param state how far it is and which version, in words
 * @param stamp "Official" or "Provisional"
 * @param official which of these it is
 * @param headline the state of things in one sentence, empty for none
 * @param rows the first places
 */
public record ShareCard(String competition, String what, String state, String stamp, boolean official, String headline,
		List<Row> rows) {

	/** So many rows are read at a glance. */
	public static final int MOST_ROWS = 4;

	public ShareCard {
		rows = rows.stream().limit(MOST_ROWS).toList();
	}

	/**
	 * A team.
	 *
	 * @param place as it is said, such as "2nd"
	 * @param figure its points, empty where there are none
	 */
	public record Row(String place, String team, String figure) {
	}

}
