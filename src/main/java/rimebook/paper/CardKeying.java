package rimebook.paper;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;
import rimebook.shared.Actor;

/** What one person keyed in from one seat's paper card: written once, never changed. */
@Entity
@Immutable
class CardKeying extends PerformanceLine {

	@Column(name = "seat_id")
	private UUID seat;

	private int number;

	private String keyedBy;

	private @Nullable String keyedById;

	@Convert(converter = Lines.class)
	private PaperCards.KeyedCard marks;

	@Enumerated(EnumType.STRING)
	private KeyingOutcome outcome;

	private int cardSequence;

	private Instant keyedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CardKeying() {
	}

	CardKeying(UUID id, PerformanceId performance, Keyed keyed, Upshot upshot, Actor actor, Instant now) {
		super(id, performance);
		this.seat = keyed.seat().value();
		this.number = keyed.number();
		this.marks = keyed.marks();
		this.outcome = upshot.outcome();
		this.cardSequence = upshot.cardSequence();
		this.keyedBy = actor.name();
		this.keyedById = actor.id();
		this.keyedAt = now;
	}

	SeatId seat() {
		return new SeatId(this.seat);
	}

	int number() {
		return this.number;
	}

	String keyedBy() {
		return this.keyedBy;
	}

	/** Whose keying it is; those written before identities were kept have the name. */
	String keyedById() {
		return (this.keyedById != null) ? this.keyedById : "name:" + this.keyedBy;
	}

	/** Tell whether that person keyed it, whatever their name was then. */
	boolean isBy(Actor actor) {
		return actor.isNotedAs(keyedById(), this.keyedBy);
	}

	PaperCards.KeyedCard marks() {
		return this.marks;
	}

	KeyingOutcome outcome() {
		return this.outcome;
	}

	int cardSequence() {
		return this.cardSequence;
	}

	Instant keyedAt() {
		return this.keyedAt;
	}

	/** Keeps the lines as JSON in one column. */
	@Converter
	static class Lines implements AttributeConverter<PaperCards.KeyedCard, String> {

		private static final JsonMapper JSON = JsonMapper.shared();

		@Override
		public String convertToDatabaseColumn(PaperCards.KeyedCard card) {
			return JSON.writeValueAsString(card.lines());
		}

		@Override
		public PaperCards.KeyedCard convertToEntityAttribute(String json) {
			return new PaperCards.KeyedCard(JSON.readValue(json, new TypeReference<Map<String, Integer>>() {
			}));
		}

	}

	/**
	 * What was keyed in of which card.
	 *
	 * @param number which keying it is of this seat's card, from 1
	 */
	record Keyed(SeatId seat, int number, PaperCards.KeyedCard marks) {
	}

	/**
	 * What came of a keying.
	 *
	 * @param cardSequence the version of the card that is received now, 0 for none
	 */
	record Upshot(KeyingOutcome outcome, int cardSequence) {
	}

}
