package rimebook.live;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;

/** Puts together what is public of a segment. */
@Component
class SegmentReader {

	private final StartingOrderDraw draw;

	private final Standings standings;

	private final Entries entries;

	SegmentReader(StartingOrderDraw draw, Standings standings, Entries entries) {
		this.draw = draw;
		this.standings = standings;
		this.entries = entries;
	}

	List<SegmentFacts> all(EventView event) {
		Map<EntryId, EntryView> teams = teams(event);
		return event.segments().stream().map((segment) -> read(event, segment, teams)).toList();
	}

	SegmentFacts one(EventView event, SegmentView segment) {
		return read(event, segment, teams(event));
	}

	/** What there is to tell of a segment before its standing. */
	Tidings tidings(EventView event, SegmentFacts facts) {
		return Tidings.ofSegment(event, facts, this.standings.latest(event.id()).orElse(null), last(facts));
	}

	/** The same of an event. */
	Tidings tidings(EventFacts facts) {
		SegmentFacts told = facts.told();
		return Tidings.ofEvent(facts, (told != null) ? last(told) : null);
	}

	/** Tell whether a team is, or was, entered in an event. */
	boolean knows(EventView event, String entry) {
		return this.entries.ofEvent(event.id()).stream().anyMatch((one) -> one.id().toString().equals(entry));
	}

	private @Nullable String last(SegmentFacts facts) {
		return (facts.version() != null) ? this.standings.lastSkated(facts.segment().id()).orElse(null) : null;
	}

	private Map<EntryId, EntryView> teams(EventView event) {
		return this.entries.ofEvent(event.id()).stream().collect(Collectors.toMap(EntryView::id, Function.identity()));
	}

	private SegmentFacts read(EventView event, SegmentView segment, Map<EntryId, EntryView> teams) {
		StartingOrderView order = this.draw.ofSegment(segment.id()).orElse(null);
		SegmentResultView result = this.standings.result(segment.id()).orElse(null);
		ResultVersion version = this.standings.latest(segment.id()).orElse(null);
		return new SegmentFacts(segment, order, result, version, this.standings.postings(segment.id()),
				event.whyCancelled(segment.id()), starts(order, result, version, teams));
	}

	private static List<Start> starts(@Nullable StartingOrderView order, @Nullable SegmentResultView result,
			@Nullable ResultVersion version, Map<EntryId, EntryView> teams) {
		if (order == null) {
			return List.of();
		}
		Map<String, Start.Mark> marks = marks(result, version);
		return order.starts()
			.stream()
			.flatMap((start) -> Stream.ofNullable(teams.get(start.entry())).map((entry) -> start(start, entry, marks)))
			.toList();
	}

	private static Start start(StartingOrderView.Start start, EntryView entry, Map<String, Start.Mark> marks) {
		Start.Mark unless = entry.isEntered() ? Start.Mark.TO_COME : Start.Mark.WITHDRAWN;
		Start.Mark mark = marks.getOrDefault(start.entry().toString(), unless);
		return new Start(start.number(), start.group(), start.entry().toString(), entry.team().name(),
				entry.team().club().name(), start.ticket(), start.digested(), mark);
	}

	/** A team is done when a published standing says so, never earlier. */
	private static Map<String, Start.Mark> marks(@Nullable SegmentResultView result, @Nullable ResultVersion version) {
		Map<String, Start.Mark> marks = new HashMap<>();
		if (result != null && result.onIce() != null) {
			marks.put(result.onIce().toString(), Start.Mark.ON_ICE);
		}
		if (version != null) {
			for (Standing.Row row : version.standing().rows()) {
				marks.put(row.entry(), Start.Mark.valueOf(row.status()));
			}
		}
		return marks;
	}

}
