package rimebook.accounts;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;

import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

/** The service's own digests; in test runs every application has cheaper ones. */
class CodeDigestsTests {

	@Test
	void aDigestIsAsSlowAsItIsSaidToBe() throws GeneralSecurityException {
		CrewSigns signs = mock(CrewSigns.class);
		given(signs.signed("seat-code")).willReturn("seat-code.salt");
		PBEKeySpec spec = new PBEKeySpec("ABCD2345".toCharArray(), "seat-code.salt".getBytes(StandardCharsets.UTF_8),
				20_000, 256);
		byte[] expected = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256").generateSecret(spec).getEncoded();
		assertThat(new CodeDigests(signs).of("abcd-23 45")).isEqualTo(HexFormat.of().formatHex(expected));
	}

}
