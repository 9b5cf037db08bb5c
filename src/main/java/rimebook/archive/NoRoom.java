package rimebook.archive;

import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;

/** Tells a full disk from everything else that may go wrong with files and databases. */
public final class NoRoom {

	/** As the operating systems say it, which is all that Java passes on. */
	private static final List<String> WORDS = List.of("No space left", "File too large", "Disk quota exceeded",
			"not enough space");

	/** As PostgreSQL says it of its own disk. */
	private static final String DISK_FULL = "53100";

	private NoRoom() {
	}

	/** Why something failed, in words without a full stop; of several lines the first. */
	public static String or(Throwable failure, String otherwise) {
		return isWhy(failure) ? "there is no room left on the disk" : otherwise.lines().findFirst().orElse("");
	}

	/** Tell whether a full disk is behind it. */
	public static boolean isWhy(Throwable failure) {
		for (Throwable one = failure; one != null; one = one.getCause()) {
			if (says(one) || one instanceof SQLException sql && isWhy(sql)
					|| Stream.of(one.getSuppressed()).anyMatch(NoRoom::isWhy)) {
				return true;
			}
		}
		return false;
	}

	/** What a batch of statements met comes after it and is no cause of it. */
	private static boolean isWhy(SQLException failure) {
		SQLException next = failure.getNextException();
		return DISK_FULL.equals(failure.getSQLState()) || next != null && isWhy((Throwable) next);
	}

	private static boolean says(Throwable failure) {
		String message = failure.getMessage();
		return message != null && WORDS.stream().anyMatch(message::contains);
	}

}
