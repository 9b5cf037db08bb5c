package rimebook.paper;

import rimebook.wording.Sentence;

/** Who says what is on a paper card. */
public sealed interface Speaker {

	/** Tell whether it is the judge's tablet. */
	default boolean isTablet() {
		return this instanceof Tablet;
	}

	/** Who it is: "Kai Berg" or "the tablet". */
	Sentence spoken();

	/** The same in English, as on the record. */
	default String words() {
		return spoken().english();
	}

	/**
	 * A person who keyed the card in.
	 *
	 * @param name they went by then
	 */
	record Person(String name) implements Speaker {

		@Override
		public Sentence spoken() {
			return Sentence.said(this.name);
		}

	}

	/** The judge's tablet, which sent the card. */
	record Tablet() implements Speaker {

		@Override
		public Sentence spoken() {
			return Sentence.of("paper.the-tablet");
		}

	}

}
