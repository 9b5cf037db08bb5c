package rimebook.timetable.web;

import java.time.LocalTime;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.timetable.BlockDraft;
import rimebook.timetable.PlanView;
import rimebook.timetable.plan.Block;
import rimebook.wording.Sentence;

/**
 * A block as typed. Times of the day are those of the rink's clock.
 *
 * @param seen the number of the plan that the person was looking at
 * @param minutes how long; what is usual for its kind where nothing is typed
 * @param anchor empty to follow what is before
 * @param gap minutes
 * @param segment empty for none
 * @param from the first team, 1 where nothing is typed
 * @param to the last team, all where nothing is typed
 * @param hands who hands over what at a ceremony
 * @param position where a new one goes on its sheet
 */
record BlockForm(int seen, @Nullable String sheet, Block.@Nullable Kind kind, @Nullable String title,
		@Nullable Integer minutes, @Nullable String anchor, @Nullable Integer gap, boolean aside,
		@Nullable String segment, @Nullable Integer from, @Nullable Integer to, @Nullable String hands,
		@Nullable Integer position) {

	static BlockForm empty(PlanView view, String sheet, int position) {
		String key = sheet.isEmpty()
				? view.plan().sheets().stream().findFirst().map((first) -> SheetKey.of(first.place())).orElse("")
				: sheet;
		return new BlockForm(view.number(), key, Block.Kind.SEGMENT, "", null, "", null, false, "", null, null, "",
				position);
	}

	static BlockForm of(Block block, int seen) {
		Block.Part part = block.part();
		LocalTime anchor = block.timing().anchor();
		return new BlockForm(seen, SheetKey.of(block.place()), block.kind(), block.title(),
				(block.kind() == Block.Kind.SEGMENT) ? null : block.seconds() / 60,
				(anchor != null) ? anchor.toString() : "",
				(block.timing().gap() > 0) ? block.timing().gap() / 60 : null, block.timing().aside(),
				(part != null) ? part.segment().toString() : "", (part != null && part.from() > 1) ? part.from() : null,
				(part != null) ? part.to() : null, block.hands(), null);
	}

	BlockDraft draft() {
		Block.Kind what = Given.read("kind", (this.kind != null) ? this.kind.name() : "", Block.Kind::valueOf,
				Sentence.of("timetable.kind-missing"));
		return new BlockDraft(SheetKey.place(this.sheet), what, Given.text(this.title), seconds(what), timing(), part(),
				Given.text(this.hands));
	}

	int where() {
		return (this.position != null) ? this.position : Integer.MAX_VALUE;
	}

	private int seconds(Block.Kind what) {
		if (this.minutes != null) {
			// Checked in the draft, where the field is named; no overflow before that.
			return Math.max(-1, Math.min(this.minutes, 9999)) * 60;
		}
		return 60 * usual(what, part() != null);
	}

	/** Common practice. */
	private static int usual(Block.Kind kind, boolean eachTeam) {
		return switch (kind) {
			case DOORS, BREAK -> 30;
			case MEETING, RESURFACING, CEREMONY -> 15;
			case PRACTICE -> eachTeam ? 8 : 30;
			case SEGMENT -> 0;
		};
	}

	private Block.Timing timing() {
		String typed = Given.text(this.anchor).strip();
		LocalTime time = typed.isEmpty() ? null : Given.read("anchor", typed,
				(text) -> SheetKey.checked(text, LocalTime::parse), Sentence.of("timetable.time-wrong"));
		int minutes = (this.gap != null) ? Math.max(-1, Math.min(this.gap, 9999)) : 0;
		return new Block.Timing(time, minutes * 60, this.aside);
	}

	private Block.@Nullable Part part() {
		String typed = Given.text(this.segment).strip();
		if (typed.isEmpty()) {
			return null;
		}
		UUID id = Given.read("segment", typed, UUID::fromString, Sentence.of("timetable.segment-wrong"));
		return new Block.Part(id, (this.from != null) ? this.from : 1, this.to);
	}

}
