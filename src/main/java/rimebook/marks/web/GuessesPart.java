package rimebook.marks.web;

import java.util.List;
import java.util.UUID;

import rimebook.competition.EventId;
import rimebook.panels.SeatGuess;

/** The devices from which seat codes were guessed lately. */
record GuessesPart(EventId event, List<Guess> guesses) implements LivePart {

	static GuessesPart of(EventId event, List<SeatGuess> recent, RinkClock clock) {
		return new GuessesPart(event,
				recent.stream()
					.map((guess) -> new Guess(guess.id(), guess.address(), clock.time(guess.at()),
							clock.time(guess.until()), guess.stopped(), guess.freedBy()))
					.toList());
	}

	/**
	 * One device.
	 *
	 * @param at when it was stopped, in the rink's time
	 * @param until when it may try again by itself
	 */
	record Guess(UUID id, String address, String at, String until, boolean stopped, String freedBy) {
	}

}
