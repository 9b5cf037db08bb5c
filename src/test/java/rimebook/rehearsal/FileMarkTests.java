package rimebook.rehearsal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class FileMarkTests {

	@Test
	void aTableGetsAColumnAlsoWhereACellHasLinesOrIsEmpty() throws IOException {
		assertThat(marked("text/csv;charset=UTF-8", "place,team\r\n1,\"Å, \"\"B\"\"\r\nC\"\r\n\r\n2,"))
			.isEqualTo("place,team,rehearsal\r\n1,\"Å, \"\"B\"\"\r\nC\",rehearsal\r\n\r\n2,,rehearsal");
		assertThat(marked("text/csv", "")).isEmpty();
		assertThat(marked("text/csv", "a\nb\n")).isEqualTo("a,rehearsal\nb,rehearsal\n");
	}

	@Test
	void anObjectGetsAMember() throws IOException {
		assertThat(marked("application/json", "{\"a\":{\"b\":1},\n\"c\":{}}"))
			.isEqualTo("{\"rehearsal\":true,\"a\":{\"b\":1},\n\"c\":{}}");
		assertThat(marked("application/problem+json", " { }")).isEqualTo(" {\"rehearsal\":true }");
		assertThat(marked("application/json", "[{\"a\":1}]")).isEqualTo("[{\"a\":1}]");
	}

	@Test
	void eachLineOfObjectsGetsOne() throws IOException {
		assertThat(marked("application/jsonl", "{\"a\":1}\n{}\n"))
			.isEqualTo("{\"rehearsal\":true,\"a\":1}\n{\"rehearsal\":true}\n");
	}

	@ParameterizedTest
	@ValueSource(
			strings = { "text/html;charset=UTF-8", "application/pdf", "text/javascript", "application/manifest+json" })
	void otherContentStaysAsItIs(String type) {
		assertThat(FileMark.of(type)).isNull();
		assertThat(FileMark.of(null)).isNull();
	}

	private static String marked(String type, String text) throws IOException {
		FileMark mark = FileMark.of(type);
		assertThat(mark).isNotNull();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
			mark.write(b, out);
		}
		mark.end(out);
		mark.end(out);
		return out.toString(StandardCharsets.UTF_8);
	}

}
