package rimebook.paper;

/** Who says what is on a paper card. */
public sealed interface Speaker {

	/** Tell whether it is the judge's tablet. */
	default boolean isTablet() {
		return this instanceof Tablet;
	}

	/** Who it is in words, as on the record: "Kai Berg" or "the tablet". */
	String words();

	/**
	 * A person who keyed the card in.
	 *
	 * @param name they went by then
	 */
	record Person(String name) implements Speaker {

		@Override
		public String words() {
			return this.name;
		}

	}

	/** The judge's tablet, which sent the card. */
	record Tablet() implements Speaker {

		@Override
		public String words() {
			return "the tablet";
		}

	}

}
