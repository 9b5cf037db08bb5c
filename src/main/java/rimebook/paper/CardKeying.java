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

	/**
	 * Write a keying down.
	 * @param number which one it is of this seat's card, from 1
	 * @param cardSequence the version of the card that is received now, 0 for none
	 */
	CardKeying(UUID id, PerformanceId performance, SeatId seat, int number, PaperCards.KeyedCard marks,
			KeyingOutcome outcome, int cardSequence, Actor actor, Instant now) {
		super(id, performance);
		this.seat = seat.value();
		this.number = number;
		this.marks = marks;
		this.outcome = outcome;
		this.cardSequence = cardSequence;
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

}
