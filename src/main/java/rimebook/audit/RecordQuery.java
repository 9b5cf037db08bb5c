package rimebook.audit;

/**
 * Which lines to show.
 *
 * @param subject the kind of thing, empty for all
 * @param text words to find in who, what, before, after or why; empty for all
 * @param page from 1, the newest lines first
 */
public record RecordQuery(String subject, String text, int page) {

	static final int PAGE_LENGTH = 50;

	public RecordQuery {
		subject = subject.strip();
		text = text.strip();
		page = Math.max(page, 1);
	}

	long skipped() {
		return (this.page - 1L) * PAGE_LENGTH;
	}

}
