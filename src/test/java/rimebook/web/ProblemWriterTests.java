package rimebook.web;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.http.HttpStatus;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class ProblemWriterTests {

	@Test
	void everyMemberIsThereEvenIfItSaysNothing() throws IOException {
		MockHttpServletResponse response = written(Refusal.ofStatus(HttpStatus.NOT_FOUND), "/api/nowhere");
		assertThat(response.getStatus()).isEqualTo(404);
		assertThat(response.getContentType()).isEqualTo("application/problem+json");
		assertThat(members(response)).isEqualTo(Map.of("type", "/problems/no-such-page", "title", "No such page",
				"status", 404, "detail", "There is nothing at this address.", "instance", "/api/nowhere", "code",
				"no-such-page", "errors", List.of(), "reference", ""));
	}

	@Test
	void whatWasReceivedBeforeIsShown() throws IOException {
		Refusal refusal = new Refusal(HttpStatus.CONFLICT, "card-content-differs",
				Sentence.said("Another card is there."),
				List.of(new Refusal.Fault("first", Sentence.said("It was 5.6."))), "", Map.of("sequence", 2));
		assertThat(members(written(refusal, "/api/cards/1")))
			.containsEntry("errors", List.of(Map.of("field", "first", "message", "It was 5.6.")))
			.containsEntry("received", Map.of("sequence", 2));
	}

	@ParameterizedTest
	@CsvSource({ "/api/a%20b, /api/a%20b", "/api/a|b, /api/a%7Cb", "/api/a%zz, /api/a%25zz", "/api/{a}, /api/%7Ba%7D" })
	void whatIsNoAddressIsAnsweredAsOne(String path, String instance) throws IOException {
		assertThat(members(written(Refusal.ofStatus(HttpStatus.NOT_FOUND), path))).containsEntry("instance", instance);
	}

	private static MockHttpServletResponse written(Refusal refusal, String path) throws IOException {
		MockHttpServletResponse response = new MockHttpServletResponse();
		ProblemWriter.write(refusal, new MockHttpServletRequest("GET", path), response);
		return response;
	}

	private static Map<String, Object> members(MockHttpServletResponse response) {
		return JsonMapper.shared().readValue(response.getContentAsByteArray(), new TypeReference<>() {
		});
	}

}
