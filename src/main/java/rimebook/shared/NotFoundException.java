package rimebook.shared;

/**
 * Nothing is there under that identity (HTTP 404).
 */
public final class NotFoundException extends RimebookException {

	private static final long serialVersionUID = 1L;

	public NotFoundException(String code, String message) {
		super(code, null, message);
	}

	/**
	 * Say that nothing is there.
	 * @param thing what was looked for, one word ("event")
	 * @param id the identity asked for
	 */
	public static NotFoundException of(String thing, Object id) {
		return new NotFoundException(thing + "-not-found", "There is no " + thing + " " + id + ".");
	}

}
