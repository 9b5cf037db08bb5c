package rimebook.draw;

import java.security.SecureRandom;
import java.util.HexFormat;

import org.springframework.stereotype.Component;

/** Makes seeds nobody can foresee: 64 random bits in 16 hexadecimal digits. */
@Component
class Seeds {

	private final SecureRandom random;

	Seeds(SecureRandom random) {
		this.random = random;
	}

	String next() {
		return HexFormat.of().toHexDigits(this.random.nextLong());
	}

}
