package rimebook.stand.web;

import java.util.List;
import java.util.UUID;

import rimebook.competition.EventId;
import rimebook.pages.RinkClock;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.wording.Sentence;

/**
 * The devices from which seat codes were guessed lately, and tablets that ask for a seat.
 */
record GuessesPart(EventId event, List<Guess> guesses, List<Question> questions) implements LivePart {

	static GuessesPart of(EventId event, List<SeatGuesses.Guess> recent, List<SeatTakeoverQuestions.Question> questions,
			RinkClock clock) {
		return new GuessesPart(event,
				recent.stream()
					.map((guess) -> new Guess(guess.id(), guess.address(), clock.time(guess.stop().at()),
							clock.time(guess.stop().until()), guess.stop().stopped(), guess.freedBy()))
					.toList(),
				questions.stream()
					.map((one) -> new Question(one.seat().toString(), one.place().spoken(), one.device(),
							clock.time(one.askedAt()), one.askedAt().toEpochMilli(), one.holder()))
					.toList());
	}

	/**
	 * A tablet that asks for a seat.
	 *
	 * @param at when it asked, in the rink's time
	 * @param asked the same in milliseconds, which names the question
	 * @param holder the tablet that has the seat
	 */
	record Question(String seat, Sentence spoken, String device, String at, long asked, String holder) {
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
