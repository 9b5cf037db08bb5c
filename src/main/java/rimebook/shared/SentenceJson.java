package rimebook.shared;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

import rimebook.wording.Sentence;

/**
 * Keeps a sentence by its key and arguments, so that it is said in any language later.
 */
@Converter
public class SentenceJson implements AttributeConverter<@Nullable Sentence, @Nullable String> {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	@Override
	public @Nullable String convertToDatabaseColumn(@Nullable Sentence sentence) {
		return (sentence != null) ? JSON.writeValueAsString(sentence) : null;
	}

	@Override
	public @Nullable Sentence convertToEntityAttribute(@Nullable String json) {
		return (json != null) ? JSON.readValue(json, Sentence.class) : null;
	}

}
