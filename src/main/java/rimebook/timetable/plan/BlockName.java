package rimebook.timetable.plan;

import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import rimebook.wording.Sentence;

/** What a block is called in a sentence at the desk. */
public final class BlockName {

	private BlockName() {
	}

	/**
	 * Its title, else its kind with the segment it is for: "Practice ice, Junior, Free".
	 */
	public static Sentence of(Block block, Map<UUID, Programme.Segment> segments) {
		if (!block.title().isEmpty()) {
			return Sentence.said(block.title());
		}
		Programme.Segment segment = (block.segment() != null) ? segments.get(block.segment()) : null;
		Sentence kind = Sentence.of("timetable.kind." + block.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
		if (segment == null) {
			return kind;
		}
		return (block.kind() == Block.Kind.SEGMENT) ? Sentence.said(segment.where())
				: Sentence.of("timetable.kind-of", kind, segment.where());
	}

}
