package rimebook.web;

import java.io.IOException;

import jakarta.servlet.ServletException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

import static org.assertj.core.api.Assertions.assertThat;

class LargeBodyFilterTests {

	/** The address is compared as the routes read it, not as it was sent. */
	@ParameterizedTest
	@CsvSource({ "/api/cards/1, 200", "/%61pi/cards/1, 200", "/api;v=1/cards/1, 200", "/desk/officials, 413",
			"/judge, 413", "/apis/cards, 413" })
	void largeBodyOfAStrangerIsForProgramsAlone(String address, int status) throws ServletException, IOException {
		MockHttpServletRequest request = new MockHttpServletRequest("POST", address);
		request.setContent(new byte[DoorValve.SMALL + 1]);
		MockHttpServletResponse response = new MockHttpServletResponse();
		MockFilterChain chain = new MockFilterChain();
		new LargeBodyFilter((shown) -> false).doFilter(request, response, chain);
		assertThat(response.getStatus()).isEqualTo(status);
		assertThat(chain.getRequest() != null).isEqualTo(status == 200);
	}

}
