package rimebook.tabulation;

/**
 * Which mark decides between two teams to whom one judge gave the same total. Equal in
 * that mark too, the teams are level on that judge's card.
 */
public enum CardTieBreak {

	/** The higher first mark: {@code 5.8 + 5.6} before {@code 5.6 + 5.8}. */
	FIRST_MARK,

	/** The higher second mark: {@code 5.6 + 5.8} before {@code 5.8 + 5.6}. */
	SECOND_MARK;

	/**
	 * Return the mark that decides.
	 * @param card a judge's card
	 * @return hundredths; the higher one is better
	 */
	public int decidingMark(CardMarks card) {
		return (this == FIRST_MARK) ? card.first() : card.second();
	}

}
