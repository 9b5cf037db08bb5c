package rimebook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Anchors as a device gives them out or somebody copies them from paper: a line each;
 * empty lines, and what stands behind a {@code #}, are passed over. A note that lies at a
 * second place is one, too: of its lines {@code name: value} only {@code anchor} counts.
 *
 * @param anchors those that could be read, in the order of the file
 * @param unreadable the numbers of the lines of the file that hold something else
 */
public record AnchorFile(List<Anchor> anchors, List<Integer> unreadable) {

	/** What a note at a second place says besides. */
	private static final String OTHERWISE = "#.*|^(?:copy|time|record-line|record-head|life|sha256): .*";

	public AnchorFile {
		anchors = List.copyOf(anchors);
		unreadable = List.copyOf(unreadable);
	}

	/** Read the text of such a file. */
	public static AnchorFile read(String text) {
		List<Anchor> anchors = new ArrayList<>();
		List<Integer> unreadable = new ArrayList<>();
		int number = 0;
		for (String line : text.lines().toList()) {
			number++;
			String kept = line.replaceFirst("^\uFEFF", "").replaceFirst(OTHERWISE, "").strip();
			if (!kept.isEmpty()) {
				Optional<Anchor> anchor = Anchor.parse(kept.replaceFirst("^anchor: ", ""));
				anchor.ifPresent(anchors::add);
				if (anchor.isEmpty()) {
					unreadable.add(number);
				}
			}
		}
		return new AnchorFile(anchors, unreadable);
	}

}
