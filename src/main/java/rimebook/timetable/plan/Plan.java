package rimebook.timetable.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What somebody planned: which ice there is on which day, and what happens on it in which
 * order. Times of the day follow from it and are not part of it ({@link Layout}).
 * Immutable; every act gives another plan.
 *
 * @param surfaces the names of the ice surfaces, the first one has number 0; one at least
 * @param sheets the days and surfaces that are used, by day and surface
 * @param blocks what happens; those of one sheet in their order, sheets in any
 * @param rules what the times are made from
 */
public record Plan(List<String> surfaces, List<Sheet> sheets, List<Block> blocks, PlanRules rules) {

	private static final Comparator<Sheet> BY_DAY = Comparator.comparing((Sheet sheet) -> sheet.place().day())
		.thenComparing((sheet) -> sheet.place().surface());

	public Plan {
		surfaces = List.copyOf(surfaces);
		sheets = sheets.stream().sorted(BY_DAY).toList();
		blocks = List.copyOf(blocks);
	}

	/** Tell whether nothing was planned yet. */
	public boolean isEmpty() {
		return this.blocks.isEmpty();
	}

	/** The blocks of one ice surface on one day, in their order. */
	public List<Block> on(Place place) {
		return this.blocks.stream().filter((block) -> block.place().equals(place)).toList();
	}

	/** The block of that identity, if it is still there. */
	public Optional<Block> block(UUID id) {
		return this.blocks.stream().filter((block) -> block.id().equals(id)).findFirst();
	}

	/** The sheet of that day and surface, if there is one. */
	public Optional<Sheet> sheet(Place place) {
		return this.sheets.stream().filter((sheet) -> sheet.place().equals(place)).findFirst();
	}

	/** The days on which there is ice, in order. */
	public List<LocalDate> days() {
		return this.sheets.stream().map((sheet) -> sheet.place().day()).distinct().toList();
	}

	/** The name of a surface; "" for one that is not named. */
	public String surface(int number) {
		return (number < this.surfaces.size()) ? this.surfaces.get(number) : "";
	}

	/**
	 * The same plan with a block before the one that now has that position on its sheet,
	 * at the end where there is none. A block of the same identity is taken out first.
	 * @param position from 0, counted without the block itself
	 */
	public Plan with(Block block, int position) {
		List<Block> others = new ArrayList<>(without(block.id()).blocks);
		List<Block> there = others.stream().filter((other) -> other.place().equals(block.place())).toList();
		int at = (position < there.size()) ? others.indexOf(there.get(Math.max(0, position))) : others.size();
		others.add(at, block);
		return new Plan(this.surfaces, this.sheets, others, this.rules);
	}

	/** The same plan with a block changed, where it was if it stays on its sheet. */
	public Plan changed(Block block) {
		int position = block(block.id()).filter((old) -> old.place().equals(block.place()))
			.map(this::position)
			.orElse(Integer.MAX_VALUE);
		return with(block, position);
	}

	/** Where a block stands on its sheet, from 0. */
	public int position(Block block) {
		return on(block.place()).indexOf(block);
	}

	/** The same plan without a block. */
	public Plan without(UUID block) {
		return new Plan(this.surfaces, this.sheets,
				this.blocks.stream().filter((other) -> !other.id().equals(block)).toList(), this.rules);
	}

	/** The same plan with a sheet in place of the one of its day and surface. */
	public Plan with(Sheet sheet) {
		List<Sheet> all = new ArrayList<>(
				this.sheets.stream().filter((other) -> !other.place().equals(sheet.place())).toList());
		all.add(sheet);
		return new Plan(this.surfaces, all, this.blocks, this.rules);
	}

	/** The same plan without a sheet; the caller sees to it that it has no blocks. */
	public Plan without(Place place) {
		return new Plan(this.surfaces, this.sheets.stream().filter((sheet) -> !sheet.place().equals(place)).toList(),
				this.blocks, this.rules);
	}

	/** The same plan by other rules. */
	public Plan by(PlanRules other) {
		return new Plan(this.surfaces, this.sheets, this.blocks, other);
	}

	/** The same plan with the surfaces called so. */
	public Plan called(List<String> names) {
		return new Plan(names, this.sheets, this.blocks, this.rules);
	}

	/**
	 * One ice surface on one day.
	 *
	 * @param surface its number, from 0
	 */
	public record Place(LocalDate day, int surface) {
	}

}
