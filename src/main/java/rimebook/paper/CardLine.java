package rimebook.paper;

import java.util.OptionalInt;

/** One line of a paper card that has to be filled in; each way of judging has its own. */
public interface CardLine {

	/** What it is kept under. */
	String key();

	/** What may stand in it: a word for the texts beside it. */
	String kind();

	/** The element’s place in the programme, 0 where the line is about none. */
	int number();

	/** The element’s code or the component’s name; empty where the kind says all. */
	String name();

	/** The greatest grade, 0 where it is none. */
	int most();

	/** Write a value of this line as people do: "5.6", "+2", "7.25". */
	String words(int value);

	/**
	 * Read what was typed.
	 * @return the value, empty for what cannot stand in this line
	 */
	OptionalInt read(String typed);

}
