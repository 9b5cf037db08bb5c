package rimebook.competition;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;

/** Keeps a way of judging by its name. */
@Converter
class JudgingMethodConverter implements AttributeConverter<JudgingMethod, String> {

	@Override
	public String convertToDatabaseColumn(JudgingMethod method) {
		return method.name();
	}

	@Override
	public JudgingMethod convertToEntityAttribute(String name) {
		return JudgingMethod.valueOf(name);
	}

}
