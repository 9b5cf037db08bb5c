package rimebook.live;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import rimebook.live.pictures.Course;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;

/** Draws how a segment went from its published versions. */
final class Courses {

	private Courses() {
	}

	/**
	 * Draw it.
	 * @param versions newest first
	 */
	static Course of(List<ResultVersion> versions) {
		List<Standing> oldestFirst = new ArrayList<>(versions.stream().map(ResultVersion::standing).toList());
		Collections.reverse(oldestFirst);
		return Course.of(oldestFirst);
	}

}
