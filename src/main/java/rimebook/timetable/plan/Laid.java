package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A plan with its times.
 *
 * @param sheets by day and surface
 * @param warnings what speaks against it, in the order of time
 */
public record Laid(List<LaidSheet> sheets, List<Warning> warnings) {

	public Laid {
		sheets = List.copyOf(sheets);
		warnings = List.copyOf(warnings);
	}

	/** All blocks, sheet by sheet. */
	public List<LaidBlock> blocks() {
		return this.sheets.stream().flatMap((sheet) -> sheet.blocks().stream()).toList();
	}

	/** When a block happens, if it is there. */
	public Optional<LaidBlock> block(UUID id) {
		return blocks().stream().filter((laid) -> laid.block().id().equals(id)).findFirst();
	}

	/**
	 * What happens on one surface on one day.
	 */
	public record LaidSheet(Sheet sheet, List<LaidBlock> blocks) {

		public LaidSheet {
			blocks = List.copyOf(blocks);
		}

	}

	/**
	 * A block with its times.
	 *
	 * @param ends when what follows can begin
	 * @param slots the teams, and what is between them, in the order of time
	 */
	public record LaidBlock(Block block, Instant begins, Instant ends, List<Slot> slots) {

		public LaidBlock {
			slots = List.copyOf(slots);
		}

		/** The slots of teams alone. */
		public List<Slot> teams() {
			return this.slots.stream().filter((slot) -> slot.team() != null).toList();
		}

		/** Whole minutes that it takes, rounded up. */
		public long minutes() {
			return Duration.between(this.begins, this.ends).plusSeconds(59).toMinutes();
		}

	}

	/**
	 * A piece of a block.
	 *
	 * @param team whose it is, {@code null} where it is nobody's
	 */
	public record Slot(SlotKind kind, Instant begins, Instant ends, Programme.@Nullable Team team) {
	}

	/** What a piece of a block is. */
	public enum SlotKind {

		/** A team's time, from its call until the next is called. */
		TEAM,

		/** A group warms up together. */
		WARM_UP,

		/** The ice is resurfaced. */
		RESURFACING

	}

}
