package rimebook.demo;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.springframework.core.io.ClassPathResource;

import rimebook.panels.DraftOfficial;

/** The invented competition as it lies in {@code demo-seed}. */
final class DemoFiles {

	private DemoFiles() {
	}

	/** All entries, in the import format. */
	static String entries() {
		return read("demo-seed/entries.csv");
	}

	static List<DraftOfficial> officials() {
		return rows("officials.csv").stream()
			.map((row) -> new DraftOfficial(row.get("name"), row.get("club"), row.get("qualification")))
			.toList();
	}

	/** The rows of a file, by the names in its first line. */
	static List<CSVRecord> rows(String file) {
		try {
			return CSVFormat.RFC4180.builder()
				.setHeader()
				.setSkipHeaderRecord(true)
				.get()
				.parse(new StringReader(read("demo-seed/" + file)))
				.getRecords();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static String read(String path) {
		try {
			return new ClassPathResource(path).getContentAsString(StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
