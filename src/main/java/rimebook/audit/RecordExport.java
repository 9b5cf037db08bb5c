package rimebook.audit;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.stereotype.Service;

import rimebook.shared.SpreadsheetCell;

/**
 * The record as a file, oldest line first. JSON, an object a line, has all that the
 * digest covers, so that anybody can follow the chain without this service. CSV is for
 * reading what was found in a spreadsheet, which has to be guarded from texts that look
 * like formulas; a text with another sign fits no digest.
 */
@Service
class RecordExport {

	private final RecordReading reading;

	private final RecordNames names;

	RecordExport(RecordReading reading, RecordNames names) {
		this.reading = reading;
		this.names = names;
	}

	/**
	 * Write every line that fits, a few hundred at a time; what is appended meanwhile is
	 * written too.
	 * @param out where to, UTF-8, left open
	 */
	public void writeJson(RecordSearch search, OutputStream out) throws IOException {
		each(search, (lines) -> {
			for (RecordLine line : lines) {
				out.write((RecordJson.write(line) + "\n").getBytes(StandardCharsets.UTF_8));
			}
		});
	}

	/**
	 * Write every line that fits with the name of what it is about.
	 * @param out where to, UTF-8, left open
	 */
	public void writeCsv(RecordSearch search, OutputStream out) throws IOException {
		CSVPrinter csv = new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), CSVFormat.RFC4180);
		csv.printRecord("line", "time", "who", "who_id", "role", "device", "kind", "thing", "thing_id", "action",
				"before", "after", "why", "digest");
		each(search, (lines) -> {
			for (ReadableLine read : this.names.of(lines)) {
				csv.printRecord(cells(read).map(SpreadsheetCell::of));
			}
		});
		csv.flush();
	}

	private void each(RecordSearch search, Writing writing) throws IOException {
		List<RecordLine> some = this.reading.after(0, search);
		while (!some.isEmpty()) {
			writing.write(some);
			some = this.reading.after(some.get(some.size() - 1).number(), search);
		}
	}

	private static Stream<String> cells(ReadableLine read) {
		RecordLine line = read.line();
		return Stream.of(Long.toString(line.number()), ChainDigest.time(line.writtenAt()), line.who().actor(),
				line.who().actorId(), line.who().role(), line.who().device(), line.thing().subject(), read.name(),
				line.thing().subjectId(), line.change().action(), line.change().before(), line.change().after(),
				line.change().reason(), line.link().digest());
	}

	/** What is done with each few hundred lines. */
	private interface Writing {

		void write(List<RecordLine> lines) throws IOException;

	}

}
