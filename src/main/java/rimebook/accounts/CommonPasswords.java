package rimebook.accounts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import com.nulabinc.zxcvbn.StandardDictionaries;
import com.nulabinc.zxcvbn.StandardKeyboards;
import com.nulabinc.zxcvbn.Zxcvbn;
import com.nulabinc.zxcvbn.ZxcvbnBuilder;

/**
 * Knows passwords that are tried first: those of published lists, words, rows of keys,
 * years, the person's own names, and all of these repeated or put in a row. The lists are
 * those of the library zxcvbn; that such passwords are refused and nothing else is asked
 * for follows NIST SP 800-63B, section 3.1.1.2.
 */
final class CommonPasswords {

	/**
	 * Tens of guesses, as a power: a list and a few variations of it are below, four
	 * unrelated words far above.
	 */
	private static final double FEW_GUESSES = 9;

	private static final List<String> OF_THE_HOUSE = List.of("rimebook", "skating", "synchro", "competition", "referee",
			"accountant", "secretary");

	private CommonPasswords() {
	}

	/** Tell whether the password is soon guessed by somebody who knows these names. */
	static boolean include(String password, String... names) {
		List<String> known = Stream
			.concat(OF_THE_HOUSE.stream(),
					Arrays.stream(names).flatMap((name) -> Stream.concat(Stream.of(name), parts(name))))
			.map((word) -> word.toLowerCase(Locale.ROOT))
			.toList();
		return Lists.KEPT.measure(password, known).getGuessesLog10() < FEW_GUESSES;
	}

	private static Stream<String> parts(String name) {
		return Arrays.stream(name.split("[\\s._@-]+")).filter((part) -> part.length() > 2);
	}

	/** Read when the first password is chosen, then kept. */
	private static final class Lists {

		static final Zxcvbn KEPT = read();

		private static Zxcvbn read() {
			try {
				return new ZxcvbnBuilder().dictionary(StandardDictionaries.PASSWORDS_LOADER.load())
					.dictionary(StandardDictionaries.ENGLISH_WIKIPEDIA_LOADER.load())
					.keyboard(StandardKeyboards.QWERTY_LOADER.load())
					.build();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}

	}

}
