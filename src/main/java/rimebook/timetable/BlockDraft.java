package rimebook.timetable;

import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Plan;
import rimebook.wording.Sentence;

/**
 * A block as somebody wants it.
 *
 * @param title up to 120 characters, empty for what its kind and segment say
 * @param seconds up to twelve hours; for practice ice of a segment what each team has;
 * dropped for a segment
 * @param gap up to twelve hours
 * @param part the segment it is for; a segment block has one
 * @param hands who hands over what, up to 500 characters; dropped where it is no ceremony
 * @throws RuleViolationException naming the field that does not fit
 */
public record BlockDraft(Plan.Place place, Block.Kind kind, String title, int seconds, Block.Timing timing,
		Block.@Nullable Part part, String hands) {

	private static final int LONGEST = 12 * 3600;

	public BlockDraft {
		title = Required.optional("title", title, 120);
		if (kind == Block.Kind.SEGMENT && part == null) {
			throw RuleViolationException.ofField("field-missing", "segment", Sentence.of("timetable.segment-missing"));
		}
		seconds = (kind == Block.Kind.SEGMENT) ? 0 : Required.number("minutes", seconds / 60, 0, LONGEST / 60) * 60;
		Required.number("gap", timing.gap() / 60, 0, LONGEST / 60);
		checkPart(part);
		hands = (kind == Block.Kind.CEREMONY) ? Required.optional("hands", hands, 500) : "";
	}

	/** A block at which nobody hands over anything. */
	public BlockDraft(Plan.Place place, Block.Kind kind, String title, int seconds, Block.Timing timing,
			Block.@Nullable Part part) {
		this(place, kind, title, seconds, timing, part, "");
	}

	private static void checkPart(Block.@Nullable Part part) {
		if (part != null) {
			Required.number("from", part.from(), 1, 999);
			if (part.to() != null) {
				Required.number("to", part.to(), part.from(), 999);
			}
		}
	}

	/** The block, once it is known that its sheet and segment are there. */
	Block block(UUID id, PlanView view) {
		if (view.plan().sheet(this.place).isEmpty()) {
			throw RuleViolationException.ofField("timetable-no-sheet", "sheet", Sentence.of("timetable.no-sheet"));
		}
		if (this.part != null && !view.programme().byId().containsKey(this.part.segment())) {
			throw RuleViolationException.ofField("timetable-no-segment", "segment",
					Sentence.of("timetable.no-segment"));
		}
		return new Block(id, this.place, this.kind, this.title, this.seconds, this.timing, this.part, this.hands);
	}

}
