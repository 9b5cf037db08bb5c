package rimebook.archive;

import java.io.IOException;

/**
 * A file that another module adds to an archive.
 *
 * @param name its path below {@code documents/}, such as {@code junior/final-result.pdf}:
 * small letters, digits, full stops, hyphens and slashes
 * @param content makes its bytes; asked once, when it is written, so that not all
 * documents are in memory at once
 */
public record ArchivedDocument(String name, Content content) {

	public ArchivedDocument {
		if (!name.matches("[a-z0-9][a-z0-9.-]*(/[a-z0-9][a-z0-9.-]*)*")) {
			throw new IllegalArgumentException("No file of an archive is called '" + name + "'");
		}
	}

	/** What is in it. */
	public interface Content {

		byte[] bytes() throws IOException;

	}

}
