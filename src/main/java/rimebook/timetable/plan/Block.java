package rimebook.timetable.plan;

import java.time.LocalTime;
import java.util.Objects;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * Something that happens on one ice surface, or beside it.
 *
 * @param title what it is called; empty for what its kind and its segment say already
 * @param seconds how long it takes; practice ice for the teams of a segment: how long
 * each of them has. A segment takes as long as its teams, and has 0 here
 * @param timing when it begins, beyond following what is before it
 * @param part whose teams it is for, {@code null} for nobody's in particular
 * @param hands who hands over what at a ceremony, as somebody wrote it, line by line; may
 * be empty, and is in plans from before it was asked for
 */
public record Block(UUID id, Plan.Place place, Kind kind, String title, int seconds, Timing timing, @Nullable Part part,
		String hands) {

	public Block {
		hands = Objects.requireNonNullElse(hands, "");
	}

	/** A block at which nobody hands over anything. */
	public Block(UUID id, Plan.Place place, Kind kind, String title, int seconds, Timing timing, @Nullable Part part) {
		this(id, place, kind, title, seconds, timing, part, "");
	}

	/** Tell whether each of its teams has a time of its own. */
	public boolean hasTeams() {
		return this.part != null && (this.kind == Kind.SEGMENT || this.kind == Kind.PRACTICE);
	}

	/** The segment it is for, {@code null} for none. */
	public @Nullable UUID segment() {
		return (this.part != null) ? this.part.segment() : null;
	}

	/** The same block at another place. */
	public Block at(Plan.Place other) {
		return new Block(this.id, other, this.kind, this.title, this.seconds, this.timing, this.part, this.hands);
	}

	/** What happens. */
	public enum Kind {

		/** The hall opens for spectators. */
		DOORS,

		/** The referee meets the judges. */
		MEETING,

		/** Ice to practise on. */
		PRACTICE,

		/** Teams skate a segment. */
		SEGMENT,

		/** The ice is resurfaced. */
		RESURFACING,

		/** Nothing. */
		BREAK,

		/** Medals are handed over. */
		CEREMONY;

		/** Tell whether people skate on the ice, so that it wears. */
		public boolean wearsIce() {
			return this == PRACTICE || this == SEGMENT;
		}

	}

	/**
	 * When a block begins.
	 *
	 * @param anchor the time of the day at which it begins whatever is before it, at the
	 * rink's clock; {@code null} to follow
	 * @param gap how many seconds nothing happens before it
	 * @param aside whether it happens beside the ice, which goes on meanwhile
	 */
	public record Timing(@Nullable LocalTime anchor, int gap, boolean aside) {

		/** It follows at once. */
		public static final Timing NEXT = new Timing(null, 0, false);

	}

	/**
	 * Which teams of a segment.
	 *
	 * @param from the first one, counted from 1 in starting order
	 * @param to the last one, {@code null} for all from the first one on
	 */
	public record Part(UUID segment, int from, @Nullable Integer to) {

		/** All teams of a segment. */
		public static Part all(UUID segment) {
			return new Part(segment, 1, null);
		}

		/** Tell whether the team at that place of the order, from 1, belongs to it. */
		public boolean has(int place) {
			return place >= this.from && (this.to == null || place <= this.to);
		}

		/** Tell whether it is the whole segment. */
		public boolean isWhole() {
			return this.from == 1 && this.to == null;
		}

	}

}
