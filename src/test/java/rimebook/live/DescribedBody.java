package rimebook.live;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Holds bodies that the service answered against the description of the public data. */
final class DescribedBody {

	/** Examples show so many of a list. */
	static final int SHOWN = 2;

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final JsonNode description;

	DescribedBody(JsonNode description) {
		this.description = description;
	}

	/** What is promised and not there, there and not promised, or of another type. */
	List<String> faults(JsonNode schema, JsonNode value, String where) {
		List<String> wrong = new ArrayList<>();
		check(schema, value, where, wrong);
		return wrong;
	}

	/** As much of a body as an example shows. */
	static JsonNode shown(JsonNode body) {
		if (body instanceof ArrayNode all) {
			ArrayNode few = JSON.createArrayNode();
			IntStream.range(0, Math.min(SHOWN, all.size())).forEach((i) -> few.add(shown(all.get(i))));
			return few;
		}
		if (body instanceof ObjectNode whole) {
			ObjectNode shown = JSON.createObjectNode();
			whole.properties().forEach((member) -> shown.set(member.getKey(), shown(member.getValue())));
			return shown;
		}
		return body;
	}

	/** Each member that is promised is there, each that is there is promised. */
	private void check(JsonNode schema, JsonNode value, String where, List<String> wrong) {
		if (schema.has("$ref")) {
			check(this.description.at(schema.get("$ref").asString().substring(1)), value, where, wrong);
			return;
		}
		if (schema.has("anyOf")) {
			if (!value.isNull()) {
				check(schema.get("anyOf").get(0), value, where, wrong);
			}
			return;
		}
		if (!types(schema.path("type")).contains(type(value))
				&& !(type(value).equals("integer") && types(schema.path("type")).contains("number"))) {
			wrong.add(where + " is " + type(value) + " and not " + schema.path("type"));
			return;
		}
		for (JsonNode name : schema.path("required")) {
			if (!value.has(name.asString())) {
				wrong.add(where + " lacks " + name.asString());
			}
		}
		if (value.isArray()) {
			value.forEach((item) -> check(schema.get("items"), item, where + "[]", wrong));
		}
		if (value.isObject() && schema.has("properties")) {
			value.properties().forEach((member) -> {
				JsonNode promised = schema.get("properties").get(member.getKey());
				if (promised == null) {
					wrong.add(where + "." + member.getKey() + " is not described");
				}
				else {
					check(promised, member.getValue(), where + "." + member.getKey(), wrong);
				}
			});
		}
	}

	private static List<String> types(JsonNode type) {
		List<String> types = new ArrayList<>();
		if (type.isArray()) {
			type.forEach((one) -> types.add(one.asString()));
		}
		else {
			types.add(type.asString(""));
		}
		return types;
	}

	private static String type(JsonNode value) {
		return value.isNull() ? "null" : value.isObject() ? "object" : value.isArray() ? "array" : value.isBoolean()
				? "boolean" : value.isIntegralNumber() ? "integer" : value.isNumber() ? "number" : "string";
	}

}
