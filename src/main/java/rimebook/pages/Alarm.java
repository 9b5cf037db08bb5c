package rimebook.pages;

import java.util.stream.Stream;

import rimebook.wording.Sentence;

/**
 * Something that the referee has to know at the stand, whatever goes on there.
 *
 * @param what what it is
 * @param path where more is said of it
 * @param isGrave whether somebody has to do something now; the others are said quietly
 */
public record Alarm(Sentence what, String path, boolean isGrave) {

	/** Whoever may have to raise one declares a bean. */
	@FunctionalInterface
	public interface Source {

		/** Those that hold now. */
		Stream<Alarm> alarms();

	}

}
