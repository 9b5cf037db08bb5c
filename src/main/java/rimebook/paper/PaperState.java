package rimebook.paper;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/**
 * How far the paper card of one seat has come, told from its keyings and from the card
 * that is received.
 *
 * @param stage how far
 * @param voices what is said to be on the paper and waits: each person's newest keying,
 * and the tablet's card where it says something else
 * @param keyings how many keyings there are
 * @param card the version of the card that is received, 0 for none
 */
public record PaperState(Stage stage, List<Voice> voices, int keyings, int card) {

	public PaperState {
		voices = List.copyOf(voices);
	}

	/** How far a card has come. */
	enum Stage {

		/** Neither keyed nor received. */
		MISSING,

		/** Keyed by one person. */
		ONCE,

		/** What was keyed differs, or the tablet sent something else. */
		DIFFER,

		/** Received, and nothing that was keyed speaks against it. */
		RECEIVED

	}

	/**
	 * Somebody who says what is on the card.
	 *
	 * @param keying what they keyed, {@code null} for the judge's tablet
	 */
	record Voice(Speaker by, PaperCards.KeyedCard marks, Instant at, @Nullable CardKeying keying) {

		static Voice of(CardKeying keying) {
			return new Voice(new Speaker.Person(keying.keyedBy()), keying.marks(), keying.keyedAt(), keying);
		}

		static Voice of(PaperCards.HeldCard tablet) {
			return new Voice(new Speaker.Tablet(), tablet.marks(), tablet.receivedAt(), null);
		}

		boolean isTablet() {
			return this.by.isTablet();
		}

		boolean isBy(Actor actor) {
			return this.keying != null && this.keying.isBy(actor);
		}

	}

	/**
	 * Tell it.
	 * @param keyings all of this seat's card, the oldest first
	 * @param card the card that is received, {@code null} for none
	 */
	static PaperState of(List<CardKeying> keyings, PaperCards.@Nullable HeldCard card) {
		int sequence = (card != null) ? card.sequence() : 0;
		if (keyings.isEmpty()) {
			return new PaperState((card != null) ? Stage.RECEIVED : Stage.MISSING, List.of(), 0, sequence);
		}
		List<Voice> voices = voices(keyings, card);
		return new PaperState(stage(keyings.get(keyings.size() - 1), voices, card), voices, keyings.size(), sequence);
	}

	private static Stage stage(CardKeying last, List<Voice> voices, PaperCards.@Nullable HeldCard card) {
		boolean another = voices.stream().anyMatch(Voice::isTablet);
		if (another || last.outcome() == KeyingOutcome.DIFFERS) {
			return Stage.DIFFER;
		}
		boolean confirmed = card != null && card.isFromTablet() && card.says(last.marks());
		return (last.outcome().isDone() || confirmed) ? Stage.RECEIVED : Stage.ONCE;
	}

	private static List<Voice> voices(List<CardKeying> keyings, PaperCards.@Nullable HeldCard card) {
		CardKeying last = keyings.get(keyings.size() - 1);
		if (last.outcome().isDone()) {
			boolean sentSince = card != null && card.sequence() > last.cardSequence();
			return sentSince ? withTablet(List.of(Voice.of(last)), card, List.of()) : List.of();
		}
		Map<String, Voice> people = new LinkedHashMap<>();
		for (CardKeying keying : keyings) {
			if (keying.outcome().isDone()) {
				people.clear();
			}
			else {
				people.put(keying.keyedById(), Voice.of(keying));
			}
		}
		List<Voice> voices = List.copyOf(people.values());
		return withTablet(voices, card, voices);
	}

	/** With the tablet's card where somebody keyed otherwise than it was sent. */
	private static List<Voice> withTablet(List<Voice> people, PaperCards.@Nullable HeldCard card,
			List<Voice> otherwise) {
		if (card == null || !card.isFromTablet()
				|| people.stream().allMatch((voice) -> voice.marks().agreesWith(card.marks()))) {
			return otherwise;
		}
		return Stream.concat(people.stream(), Stream.of(Voice.of(card))).toList();
	}

	/** What another person keyed, {@code null} before. */
	@Nullable Voice other(Actor actor) {
		return this.voices.stream().filter((voice) -> !voice.isTablet() && !voice.isBy(actor)).findFirst().orElse(null);
	}

	/**
	 * Tell whether somebody else, or the tablet, says the same of each line, so that two
	 * stand for all of the card.
	 */
	boolean isSaidByOthers(PaperCards.KeyedCard card, Actor actor) {
		List<PaperCards.KeyedCard> others = this.voices.stream()
			.filter((voice) -> !voice.isBy(actor))
			.map(Voice::marks)
			.toList();
		return card.lines()
			.entrySet()
			.stream()
			.allMatch((line) -> others.stream().anyMatch((other) -> other.lines().entrySet().contains(line)));
	}

	/** Tell whether the card cannot be closed as it is. */
	public boolean isUnsettled() {
		return this.stage == Stage.ONCE || this.stage == Stage.DIFFER;
	}

	/** The name of a seat with what is still to be done about it in brackets. */
	public Sentence behind(Sentence seat) {
		return isUnsettled() ? Sentence.of("paper.seat-unsettled", seat, spoken()) : seat;
	}

	/** What is still to be done about the keyings, empty for nothing. */
	Sentence spoken() {
		return switch (this.stage) {
			case MISSING, RECEIVED -> Sentence.NONE;
			case ONCE -> Sentence.of("paper.keyed-once", this.voices.get(0).by().spoken());
			case DIFFER -> Sentence
				.of(this.voices.stream().anyMatch(Voice::isTablet) ? "paper.keyed-otherwise" : "paper.keyings-differ");
		};
	}

	/** The same in English, as on the record. */
	String words() {
		return spoken().english();
	}

}
