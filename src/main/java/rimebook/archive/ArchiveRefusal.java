package rimebook.archive;

/** Why an archive is not taken, or cannot be made, in one sentence. */
public class ArchiveRefusal extends RuntimeException {

	private static final long serialVersionUID = 1L;

	ArchiveRefusal(String sentence) {
		super(sentence);
	}

	ArchiveRefusal(String sentence, Throwable cause) {
		super(sentence, cause);
	}

	/** The sentence. */
	public String sentence() {
		return String.valueOf(getMessage());
	}

}
