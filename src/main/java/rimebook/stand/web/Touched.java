package rimebook.stand.web;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.wording.Sentence;

/**
 * The touch of the clock that a form rests on, written as its moment in milliseconds.
 */
final class Touched {

	private Touched() {
	}

	/**
	 * Read it.
	 * @param given as the page had it; empty for none
	 */
	static @Nullable Instant read(@Nullable String given) {
		return (given == null || given.isBlank()) ? null : Given.read("touch", given,
				(text) -> Instant.ofEpochMilli(Long.parseLong(text)), Sentence.of("stand.open-again"));
	}

}
