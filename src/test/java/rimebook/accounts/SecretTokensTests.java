package rimebook.accounts;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class SecretTokensTests {

	private final SecretTokens tokens = new SecretTokens(new SecureRandom());

	@Test
	void codesHoldNoLookAlikes() {
		String many = IntStream.range(0, 500).mapToObj((i) -> this.tokens.code()).collect(Collectors.joining());
		assertThat(many).hasSize(4000)
			.matches("[" + SecretTokens.ALPHABET + "]+")
			.doesNotContainPattern("[0O1IL2Z5S8BU]");
		assertThat(many.chars().distinct().count()).isEqualTo(SecretTokens.ALPHABET.length());
	}

	@Test
	void tokensAreThirtyTwoBytes() {
		assertThat(Base64.getUrlDecoder().decode(this.tokens.token())).hasSize(32);
		assertThat(this.tokens.token()).isNotEqualTo(this.tokens.token());
	}

	/** The digest of "abc" is printed in FIPS 180-4, example B.1. */
	@Test
	void digestsWithSha256() {
		assertThat(SecretTokens.digest("abc"))
			.isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
	}

}
