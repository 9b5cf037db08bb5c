package rimebook.draw;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Who starts in a segment: every entry that has not withdrawn, in later segments those
 * that the standing sends on.
 */
@Component
class StartingField {

	private final Entries entries;

	private final ObjectProvider<StandingBefore> standing;

	StartingField(Entries entries, ObjectProvider<StandingBefore> standing) {
		this.entries = entries;
		this.standing = standing;
	}

	List<Starter> of(EventView event, SegmentId segment) {
		List<Starter> field = all(event, segment);
		if (field.isEmpty()) {
			throw new RuleViolationException("draw-no-entries", Sentence.of("draw.no-entries"));
		}
		return field;
	}

	/** Those that start and are not in that order. */
	List<Starter> leftOut(StartingOrderView order, EventView event, SegmentId segment) {
		Set<EntryId> drawn = order.starts().stream().map(StartingOrderView.Start::entry).collect(Collectors.toSet());
		return all(event, segment).stream().filter((starter) -> !drawn.contains(starter.entry().id())).toList();
	}

	private List<Starter> all(EventView event, SegmentId segment) {
		Map<EntryId, EntryView> entered = this.entries.ofEvent(event.id())
			.stream()
			.filter((entry) -> entry.state() == EntryState.ENTERED)
			.collect(Collectors.toMap(EntryView::id, Function.identity()));
		return event.previousSegments(segment).isEmpty() ? unplaced(entered) : placed(segment, entered);
	}

	private List<Starter> unplaced(Map<EntryId, EntryView> entered) {
		return entered.values().stream().map((entry) -> new Starter(entry, null)).toList();
	}

	private List<Starter> placed(SegmentId segment, Map<EntryId, EntryView> entered) {
		return this.standing.getObject()
			.standingBefore(segment)
			.stream()
			.flatMap((ranked) -> Stream.ofNullable(entered.get(ranked.entry()))
				.map((entry) -> new Starter(entry, ranked.place())))
			.toList();
	}

}
