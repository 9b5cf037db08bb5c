package rimebook.points;

import java.util.List;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Keeps what belongs to one version as JSON in one column. */
final class PointsJson {

	/** A flag that a row from before does not have yet is not set. */
	private static final JsonMapper JSON = JsonMapper.builder()
		.disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
		.build();

	private PointsJson() {
	}

	/** The called elements of one list. */
	@Converter
	static class Elements implements AttributeConverter<List<CalledElement>, String> {

		@Override
		public String convertToDatabaseColumn(List<CalledElement> elements) {
			return JSON.writeValueAsString(elements);
		}

		@Override
		public List<CalledElement> convertToEntityAttribute(String json) {
			return List.of(JSON.readValue(json, CalledElement[].class));
		}

	}

	/** The marks of one card. */
	@Converter
	static class Marks implements AttributeConverter<PointsMarks, String> {

		@Override
		public String convertToDatabaseColumn(PointsMarks marks) {
			return JSON.writeValueAsString(marks);
		}

		@Override
		public PointsMarks convertToEntityAttribute(String json) {
			return JSON.readValue(json, PointsMarks.class);
		}

	}

	/** The deductions of one list. */
	@Converter
	static class Deductions implements AttributeConverter<List<NotedDeduction>, String> {

		@Override
		public String convertToDatabaseColumn(List<NotedDeduction> deductions) {
			return JSON.writeValueAsString(deductions);
		}

		@Override
		public List<NotedDeduction> convertToEntityAttribute(String json) {
			return List.of(JSON.readValue(json, NotedDeduction[].class));
		}

	}

}
