package rimebook.rosters;

import java.util.Random;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class CommitmentTests {

	/**
	 * The digest of the bytes 00 to 0f, 00000002, "Bo" and 00000000, as sha256sum of GNU
	 * coreutils says it.
	 */
	@Test
	void isTheDigestOfSaltAndValuesBehindTheirLengths() {
		assertThat(Commitment.of("000102030405060708090a0b0c0d0e0f", "Bo", ""))
			.isEqualTo("8d8ac12e4b55cc389c50bb8c7d7c8c0698f51e2c3e740b5e5e0b96b9b78e61fe");
	}

	@Test
	void differsByValueBorderAndSalt() {
		String salt = Commitment.salt(new Random(7));
		assertThat(salt).matches("[0-9a-f]{32}").isNotEqualTo(Commitment.salt(new Random(8)));
		assertThat(Commitment.of(salt, "a", "bc")).isNotEqualTo(Commitment.of(salt, "ab", "c"))
			.isNotEqualTo(Commitment.of(Commitment.salt(new Random(8)), "a", "bc"))
			.isEqualTo(Commitment.of(salt, "a", "bc"));
	}

}
