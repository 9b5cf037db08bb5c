package rimebook.rehearsal;

import java.io.IOException;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpHeaders;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

import static org.assertj.core.api.Assertions.assertThat;

class MarkedFilesTests {

	/** As the framework does before it answers a refusal instead. */
	@Test
	void aNameThatIsTakenBackIsNoFault() throws ServletException, IOException {
		MockHttpServletResponse answer = new MockHttpServletResponse();
		new MarkedFiles().doFilter(new MockHttpServletRequest(), answer, (request, response) -> {
			HttpServletResponse marked = (HttpServletResponse) response;
			marked.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"a.csv\"");
			marked.setHeader(HttpHeaders.CONTENT_DISPOSITION, null);
			marked.setStatus(404);
		});
		assertThat(answer.getStatus()).isEqualTo(404);
	}

	@Test
	void aFileIsNamedAfterTheRehearsal() throws ServletException, IOException {
		MockHttpServletResponse answer = new MockHttpServletResponse();
		new MarkedFiles().doFilter(new MockHttpServletRequest(), answer,
				(request, response) -> ((HttpServletResponse) response).setHeader(HttpHeaders.CONTENT_DISPOSITION,
						"attachment; filename=\"a.csv\""));
		assertThat(answer.getHeader(HttpHeaders.CONTENT_DISPOSITION)).contains("filename=\"rehearsal-a.csv\"");
	}

}
