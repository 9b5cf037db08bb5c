package rimebook.live;

import java.util.EnumSet;
import java.util.Set;

import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

/**
 * What of a version's note is for everybody: corrections, but nothing about a team's
 * health.
 */
final class PublicNote {

	private static final Set<ResultVersion.Cause> FOR_EVERYBODY = EnumSet.of(ResultVersion.Cause.CORRECTED,
			ResultVersion.Cause.REOPENED, ResultVersion.Cause.CANCELLED);

	private PublicNote() {
	}

	static Sentence of(ResultVersion version) {
		return FOR_EVERYBODY.contains(version.cause()) ? version.said() : Sentence.NONE;
	}

}
