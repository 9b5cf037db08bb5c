package rimebook.tables;

import java.io.UncheckedIOException;
import java.util.Iterator;

import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Walks over the records of a file, passing by empty lines but counting them. */
final class TableLines {

	private final CSVParser parser;

	private final Iterator<CSVRecord> records;

	private long lineOfRecord;

	TableLines(CSVParser parser) {
		this.parser = parser;
		this.records = parser.iterator();
	}

	@Nullable CSVRecord next() {
		while (true) {
			this.lineOfRecord = this.parser.getCurrentLineNumber() + 1;
			CSVRecord record = read();
			if (record == null || !isEmpty(record)) {
				return record;
			}
		}
	}

	/** The line on which the record that was read last begins. */
	int lineOfRecord() {
		return Math.toIntExact(this.lineOfRecord);
	}

	private @Nullable CSVRecord read() {
		try {
			return this.records.hasNext() ? this.records.next() : null;
		}
		catch (UncheckedIOException ex) {
			throw TableFile.refusal("import-quotation", Sentence.of("tables.quotation", lineOfRecord()));
		}
	}

	private static boolean isEmpty(CSVRecord record) {
		return record.size() == 1 && record.get(0).isBlank();
	}

}
