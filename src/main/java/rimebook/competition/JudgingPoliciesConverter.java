package rimebook.competition;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.hibernate.annotations.Immutable;
import tools.jackson.databind.json.JsonMapper;

/**
 * Keeps the policies of an event as JSON in one column. They are values: without saying
 * so, each reading of an event would write and read them again to see whether they
 * changed.
 */
@Converter
@Immutable
class JudgingPoliciesConverter implements AttributeConverter<JudgingPolicies, String> {

	private static final JsonMapper JSON = JsonMapper.shared();

	@Override
	public String convertToDatabaseColumn(JudgingPolicies policies) {
		return JSON.writeValueAsString(policies);
	}

	@Override
	public JudgingPolicies convertToEntityAttribute(String json) {
		return JSON.readValue(json, JudgingPolicies.class);
	}

}
