package rimebook.cli;

/** A file that cannot be used; the message begins with its name and the position. */
final class InputException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private InputException(String message) {
		super(message);
	}

	static InputException at(String file, long line, int column, String sentence) {
		return new InputException(file + ":line " + line + ", column " + column + ": " + sentence);
	}

	static InputException of(String file, String sentence) {
		return new InputException(file + ": " + sentence);
	}

}
