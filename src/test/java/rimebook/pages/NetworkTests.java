package rimebook.pages;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class NetworkTests {

	@ParameterizedTest(name = "{0} is counted as {1}")
	@CsvSource(textBlock = """
			192.168.4.7,               192.168.4.7
			::ffff:192.168.4.7,        192.168.4.7
			0:0:0:0:0:0:0:1,           0:0:0:0:0:0:0:1
			2001:db8:0:1:a:b:c:d,      2001:db8:0:1:0:0:0:0/64
			2001:db8:0:1::7,           2001:db8:0:1:0:0:0:0/64
			2001:db8:0:2::7,           2001:db8:0:2:0:0:0:0/64
			2001:db8::1:2:3:4:5,       2001:db8:0:1:0:0:0:0/64
			2001:DB8:0:1::7,           2001:db8:0:1:0:0:0:0/64
			fe80::1%1,                 fe80:0:0:0:0:0:0:0/64
			fe80::1%nowhere0,          fe80:0:0:0:0:0:0:0/64
			""")
	void devicesOfOneNetworkAreCountedTogether(String address, String network) {
		assertThat(Network.of(address)).isEqualTo(network);
	}

}
