package rimebook.cli;

/** Arguments that cannot be understood; the sentence says which and what was expected. */
final class UsageException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	UsageException(String sentence) {
		super(sentence);
	}

}
