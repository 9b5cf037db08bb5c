package rimebook.audit;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * A line as an object of JSON, with all that its digest covers. One of which only the
 * link is known has nothing but that.
 */
final class RecordJson {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private RecordJson() {
	}

	static String write(RecordLine line) {
		Map<String, Object> fields = new LinkedHashMap<>();
		fields.put("number", line.number());
		fields.put("form", line.link().form());
		if (!line.link().isAlone()) {
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
		}
		fields.put("previousDigest", line.link().previousDigest());
		fields.put("digest", line.link().digest());
		return JSON.writeValueAsString(fields);
	}

	/**
	 * The line that was written.
	 * @throws RuntimeException if it is none
	 */
	static RecordLine read(String text) {
		Fields fields = new Fields(JSON.readValue(text, new TypeReference<Map<String, Object>>() {
		}));
		RecordLine.Link link = new RecordLine.Link(Long.parseLong(fields.of("number")),
				Integer.parseInt(fields.of("form")), fields.of("previousDigest"), fields.of("digest"));
		if (link.isAlone()) {
			return RecordLine.alone(link);
		}
		return new RecordLine(link, Instant.parse(fields.of("time")),
				new RecordLine.Who(fields.of("actor"), fields.of("actorId"), fields.of("role"), fields.of("device")),
				new RecordLine.Thing(fields.of("subject"), fields.of("subjectId"), fields.of("evidence")),
				new RecordLine.Change(fields.of("action"), fields.of("before"), fields.of("after"),
						fields.of("reason")));
	}

	/** The members of an object. */
	private record Fields(Map<String, Object> members) {

		String of(String name) {
			return Objects.requireNonNull(this.members.get(name), name).toString();
		}

	}

}
