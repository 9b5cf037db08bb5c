package rimebook.entries;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import rimebook.competition.EventView;
import rimebook.shared.SpreadsheetCell;

/** Writes entries as the import reads them. */
final class ExportFile {

	private final StringBuilder text = new StringBuilder();

	private final CSVPrinter printer;

	ExportFile() {
		try {
			this.printer = new CSVPrinter(this.text, CSVFormat.DEFAULT);
			this.printer.printRecord(ImportFile.COLUMNS.names());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	void add(EventView event, TeamView team) {
		try {
			this.printer.printRecord(
					Stream.of(event.name(), team.club().name(), team.club().town(), team.name(), team.spokenAs())
						.map(SpreadsheetCell::of));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@Override
	public String toString() {
		return this.text.toString();
	}

}
