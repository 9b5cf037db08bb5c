package rimebook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Anchors as a device gives them out or somebody copies them from paper: a line each;
 * empty lines, and what stands behind a {@code #}, are passed over.
 *
 * @param anchors those that could be read, in the order of the file
 * @param unreadable the numbers of the lines of the file that hold something else
 */
public record AnchorFile(List<Anchor> anchors, List<Integer> unreadable) {

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
			String kept = line.replaceFirst("^\uFEFF", "").replaceFirst("#.*", "").strip();
			if (!kept.isEmpty()) {
				Optional<Anchor> anchor = Anchor.parse(kept);
				anchor.ifPresent(anchors::add);
				if (anchor.isEmpty()) {
					unreadable.add(number);
				}
			}
		}
		return new AnchorFile(anchors, unreadable);
	}

}
