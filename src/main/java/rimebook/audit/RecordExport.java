package rimebook.audit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import tools.jackson.databind.json.JsonMapper;

/**
 * The whole record as a file: a JSON object a line, oldest first, with all that the
 * digest covers, so that anybody can follow the chain without this service. JSON and not
 * CSV, since a spreadsheet would have to be guarded from texts that look like formulas,
 * and a text with another sign fits no digest.
 */
@Service
class RecordExport {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final JdbcTemplate database;

	RecordExport(JdbcTemplate database) {
		this.database = database;
	}

	/**
	 * Write every line there is, a few hundred at a time; what is appended meanwhile is
	 * written too.
	 * @param out where to, UTF-8, left open
	 */
	public void write(OutputStream out) throws IOException {
		List<RecordLine> some = after(0);
		while (!some.isEmpty()) {
			for (RecordLine line : some) {
				out.write((JSON.writeValueAsString(fields(line)) + "\n").getBytes(StandardCharsets.UTF_8));
			}
			some = after(some.get(some.size() - 1).number());
		}
	}

	private List<RecordLine> after(long number) {
		ConnectionCallback<List<RecordLine>> read = (connection) -> RecordLineReader.after(connection, number);
		List<RecordLine> lines = this.database.execute(read);
		return (lines != null) ? lines : List.of();
	}

	private static Map<String, Object> fields(RecordLine line) {
		Map<String, Object> fields = new LinkedHashMap<>();
		fields.put("number", line.number());
		fields.put("form", line.link().form());
		fields.put("time", ChainDigest.time(line.writtenAt()));
		fields.put("actor", line.who().actor());
		fields.put("actorId", line.who().actorId());
		fields.put("role", line.who().role());
		fields.put("device", line.who().device());
		fields.put("subject", line.thing().subject());
		fields.put("subjectId", line.thing().subjectId());
		fields.put("action", line.change().action());
		fields.put("before", line.change().before());
		fields.put("after", line.change().after());
		fields.put("reason", line.change().reason());
		fields.put("evidence", line.thing().evidence());
		fields.put("previousDigest", line.link().previousDigest());
		fields.put("digest", line.link().digest());
		return fields;
	}

}
