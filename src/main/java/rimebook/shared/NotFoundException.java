package rimebook.shared;

import rimebook.wording.Sentence;

/**
 * Nothing is there under that identity (HTTP 404).
 */
public final class NotFoundException extends RimebookException {

	private static final long serialVersionUID = 2L;

	public NotFoundException(String code, Sentence sentence) {
		super(code, null, sentence);
	}

	/**
	 * Say that nothing is there.
	 * @param thing what was looked for, one word ("event"), named by
	 * {@code shared.thing.<thing>}
	 * @param id the identity asked for
	 */
	public static NotFoundException of(String thing, Object id) {
		return new NotFoundException(thing + "-not-found",
				Sentence.of("shared.none", Sentence.of("shared.thing." + thing), String.valueOf(id)));
	}

}
