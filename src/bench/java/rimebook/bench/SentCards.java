package rimebook.bench;

import java.util.Map;

import tools.jackson.databind.JsonNode;

/**
 * What the judges of one event sent, as this program knows it by itself, and the places
 * that the pure functions make of it. Segments are counted from 0, judges too.
 */
interface SentCards {

	/** Where a card goes, with the identity behind it. */
	String path();

	/**
	 * Think of a card for the team on the ice and keep it as what counts; if the judge gave
	 * the team one before, that one is forgotten.
	 * @param task what the judge’s tablet was told
	 * @return the card as it is sent
	 */
	String next(int segment, JsonNode task, int judge);

	/** What the database should hold of a card that was sent. */
	String kept(String sent);

	/**
	 * Think of something else on a closed card and keep it as what counts.
	 * @return the fields of the form in which it is proposed, without whose card it is
	 */
	Map<String, String> correct(int segment, String team, int judge);

	/** Let everything be forgotten that a team which has left was given in a segment. */
	void forget(int segment, String team);

	/** The places of a segment by team. */
	Map<String, Integer> places(int segment);

	/** The places of the event by team, after both segments. */
	Map<String, Integer> places();

}
