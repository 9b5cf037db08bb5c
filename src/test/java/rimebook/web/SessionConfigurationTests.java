package rimebook.web;

import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.springframework.core.convert.ConversionService;
import org.springframework.core.serializer.support.SerializingConverter;

import static org.assertj.core.api.Assertions.assertThat;

/** What is in a session when another version of the service goes on with it. */
class SessionConfigurationTests {

	private final ConversionService conversion = new SessionConfiguration().whatCannotBeReadIsNotThere();

	@Test
	void whatThisVersionWroteIsReadBack() {
		byte[] bytes = this.conversion.convert("Runa Hale", byte[].class);
		assertThat(this.conversion.convert(bytes, Object.class)).isEqualTo("Runa Hale");
	}

	/** A class that is gone, and bytes that are no object at all. */
	@Test
	void whatThisVersionCannotReadIsNotThere() {
		byte[] known = new SerializingConverter().convert(new IllegalStateException("of another version"));
		byte[] gone = new String(known, StandardCharsets.ISO_8859_1)
			.replace("IllegalStateException", "IllegalStateExceptiom")
			.getBytes(StandardCharsets.ISO_8859_1);
		assertThat(this.conversion.convert(known, Object.class)).isInstanceOf(IllegalStateException.class);
		assertThat(this.conversion.convert(gone, Object.class)).isNull();
		assertThat(this.conversion.convert(new byte[] { 1, 2, 3 }, Object.class)).isNull();
	}

}
