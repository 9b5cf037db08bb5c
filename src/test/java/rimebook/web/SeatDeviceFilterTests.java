package rimebook.web;

import java.io.IOException;
import java.util.Optional;
import java.util.UUID;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpSession;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.RequestAttributeSecurityContextRepository;

import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;

class SeatDeviceFilterTests {

	private static final SeatCodes.Grant SEAT = new SeatCodes.Grant(UUID.randomUUID(), "Judge 3, Adult");

	private final SeatCodes seats = mock();

	private final CrewCookie crew = mock();

	private final ObjectProvider<SeatCodes> found = mock();

	private final SeatDeviceFilter filter = new SeatDeviceFilter(this.found, this.crew);

	private final Sessionless request = new Sessionless();

	private final MockFilterChain chain = new MockFilterChain();

	@BeforeEach
	void oneTokenOpensASeat() {
		given(this.found.getObject()).willReturn(this.seats);
		given(this.seats.grantOf(any())).willReturn(Optional.empty());
		given(this.seats.grantOf("good")).willReturn(Optional.of(SEAT));
	}

	@AfterEach
	void nobodyIsSignedIn() {
		SecurityContextHolder.clearContext();
	}

	@Test
	void aBearerTokenIsTheSeat() throws ServletException, IOException {
		this.request.addHeader("Authorization", "Bearer good ");
		assertThat(seen()).isEqualTo(new SeatPrincipal(SEAT));
		then(this.crew).should().give(any(), any());
	}

	@Test
	void aCookieIsTheSeat() throws ServletException, IOException {
		this.request.setCookies(new Cookie(SeatDeviceFilter.COOKIE, "good"));
		assertThat(seen()).isEqualTo(new SeatPrincipal(SEAT));
	}

	@Test
	void whoeverShowsATokenThatOpensNothingGoesOnAsAnybody() throws ServletException, IOException {
		this.request.addHeader("Authorization", "Bearer bad");
		assertThat(seen()).isNull();
		then(this.crew).should(never()).give(any(), any());
	}

	@Test
	void whoeverShowsNoneIsNotLookedFor() throws ServletException, IOException {
		this.request.addHeader("Authorization", "Basic good");
		assertThat(seen()).isNull();
		then(this.seats).shouldHaveNoInteractions();
	}

	@Test
	void anAnswerThatIsWrittenLaterIsStillToTheSeat() throws ServletException, IOException {
		this.request.addHeader("Authorization", "Bearer good");
		seen();
		assertThat(new RequestAttributeSecurityContextRepository().loadDeferredContext(this.request)
			.get()
			.getAuthentication()).isNotNull();
		SecurityContextHolder.clearContext();
		this.request.setDispatcherType(DispatcherType.ASYNC);
		this.chain.reset();
		assertThat(seen()).isEqualTo(new SeatPrincipal(SEAT));
	}

	/** Who is signed in when the rest of the chain is reached. */
	private @Nullable Object seen() throws ServletException, IOException {
		this.filter.doFilter(this.request, new MockHttpServletResponse(), this.chain);
		assertThat(this.chain.getRequest()).isSameAs(this.request);
		Authentication person = SecurityContextHolder.getContext().getAuthentication();
		return (person != null) ? person.getPrincipal() : null;
	}

	/** A person's session on the same device is none of the seat's business. */
	private static final class Sessionless extends MockHttpServletRequest {

		@Override
		public HttpSession getSession(boolean create) {
			throw new AssertionError("No session is to be looked for");
		}

		@Override
		public HttpSession getSession() {
			return getSession(true);
		}

	}

}
