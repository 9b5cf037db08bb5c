package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;

import org.springframework.core.NestedExceptionUtils;

import rimebook.wording.Sentence;

/** Why a copy failed, in words for people at a rink. */
final class CopyFailure {

	private static final long HARDLY_ANYTHING = 4L << 20;

	/** As Linux and macOS say it; a copy that broke off has given its room back. */
	private static final String NO_SPACE = "No space left on device";

	private CopyFailure() {
	}

	static Sentence of(Exception failed, CopyFolder folder) {
		// Where a stick was there may be an empty folder.
		if (failed instanceof NoSuchFileException || !Files.isDirectory(folder.path())) {
			return Sentence.of("standby.failed.gone", folder.path().toString());
		}
		String words = String.valueOf(NestedExceptionUtils.getMostSpecificCause(failed).getMessage());
		if (words.contains(NO_SPACE) || isFull(folder)) {
			return Sentence.of("standby.failed.full", folder.path().toString());
		}
		if (!Files.isWritable(folder.path())) {
			return Sentence.of("standby.failed.not-writable", folder.path().toString());
		}
		return Sentence.of("standby.failed.other", words);
	}

	private static boolean isFull(CopyFolder folder) {
		try {
			return Files.getFileStore(folder.path()).getUsableSpace() < HARDLY_ANYTHING;
		}
		catch (IOException ex) {
			return false;
		}
	}

}
