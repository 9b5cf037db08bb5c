package rimebook.pages;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.env.MockEnvironment;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

class HouseAddressTests {

	@ParameterizedTest
	@CsvSource({ "http://192.168.4.2:8080, http://192.168.4.2:8080", "192.168.4.2:8080, http://192.168.4.2:8080",
			"' rink.example/desk/panel?x=1 ', http://rink.example", "HTTPS://rink.example/, https://rink.example",
			"http://[fe80::1]:8080, http://[fe80::1]:8080" })
	void readsAddressesAsPeopleTypeThem(String typed, String base) {
		assertThat(HouseAddress.of(typed).base()).isEqualTo(base);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "not an address", "ftp://rink.example", "http://", "javascript:alert(1)", "http://a b",
			"http://rink.example:port" })
	void refusesWhatNoTabletCanOpen(String typed) {
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> HouseAddress.of(typed))
			.withMessageContaining("such as http://192.168.4.2:8080")
			.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("address"));
	}

	@ParameterizedTest
	@CsvSource({ "localhost:8080, true", "127.0.0.1, true", "http://[::1]:8080, true", "192.168.4.2, false",
			"rink.example, false", "127.rink.example, false" })
	void knowsWhatMeansTheTabletItself(String typed, boolean local) {
		assertThat(HouseAddress.of(typed).isLocal()).isEqualTo(local);
	}

	@Test
	void keepsSchemeAndPortAtAnotherHost() {
		assertThat(HouseAddress.of("localhost:8080").at("10.0.0.7").base()).isEqualTo("http://10.0.0.7:8080");
		assertThat(HouseAddress.of("https://localhost").at("10.0.0.7").base()).isEqualTo("https://10.0.0.7");
	}

	@Test
	void keepsSchemeAndHostAtAnotherPort() {
		assertThat(HouseAddress.of("https://rink.example").at(8453).base()).isEqualTo("https://rink.example:8453");
		assertThat(HouseAddress.of("http://[fe80::1]:8080").at(8090).base()).isEqualTo("http://[fe80::1]:8090");
	}

	/** A name that is set may be that of a proxy, which does not lead to other ports. */
	@ParameterizedTest
	@CsvSource({ "http://rink.example:8080, http://rink.example:8090", "https://rink.example:8080, ''",
			"http://rink.example, ''", "'', ''" })
	void anotherServiceOfThisMachineHasItsNameOrItsAddress(String set, String beside) {
		LanAddresses lan = mock(LanAddresses.class);
		given(lan.all()).willReturn(List.of("10.0.0.7"));
		HouseAddresses house = new HouseAddresses(new HouseSettings(set), lan,
				new MockEnvironment().withProperty("local.server.port", "8080"));
		assertThat(house.beside(8090).base()).isEqualTo(beside.isEmpty() ? "http://10.0.0.7:8090" : beside);
		given(lan.all()).willReturn(List.of());
		assertThat(house.beside(8090).base()).isEqualTo(beside.isEmpty() ? "http://localhost:8090" : beside);
	}

	@Test
	void leadsToTheJoinPage() {
		assertThat(HouseAddress.of("10.0.0.7:8080").join("ACDEFGHJ"))
			.isEqualTo("http://10.0.0.7:8080/judge?code=ACDEFGHJ");
	}

}
