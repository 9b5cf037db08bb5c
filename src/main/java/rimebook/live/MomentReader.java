package rimebook.live;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.PrintedNames;
import rimebook.protests.Protests;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.rulings.Rulings;
import rimebook.timetable.TimetableVersions;

/** Reads where a competition stands, with a few small queries. */
@Component
class MomentReader {

	/** More than any count of one life of the service comes to. */
	private static final int LIFE = 1_000_000;

	private final Published published;

	private final Entries entries;

	private final StartingOrderDraw draw;

	private final Standings standings;

	private final TimetableVersions timetables;

	private final Protests protests;

	private final Rulings rulings;

	private final TimesWatch times;

	private final ObjectProvider<WentBack> wentBack;

	private final ObjectProvider<PrintedNames> names;

	MomentReader(Published published, Entries entries, StartingOrderDraw draw, Standings standings,
			TimetableVersions timetables, TimesWatch times, Protests protests, Rulings rulings,
			ObjectProvider<WentBack> wentBack, ObjectProvider<PrintedNames> names) {
		this.names = names;
		this.protests = protests;
		this.rulings = rulings;
		this.timetables = timetables;
		this.times = times;
		this.wentBack = wentBack;
		this.published = published;
		this.entries = entries;
		this.draw = draw;
		this.standings = standings;
	}

	/**
	 * Read the moment of a published competition.
	 * @param before what was read the last time, so that only what moved is read in full
	 * @throws rimebook.shared.NotFoundException if there is none or it is not public
	 */
	Moment read(String slug, @Nullable Moment before) {
		CompetitionView competition = this.published.competition(slug);
		List<EventView> events = this.published.events(competition);
		List<SegmentId> ids = events.stream()
			.map(EventView::segments)
			.flatMap(List::stream)
			.map(SegmentView::id)
			.toList();
		int plan = plan(competition, events, ids);
		Map<String, Moment.SegmentMoment> segments = new LinkedHashMap<>();
		for (SegmentId id : ids) {
			String segment = id.toString();
			segments.put(segment, read(id, plan, (before != null) ? before.segments().get(segment) : null));
		}
		return new Moment(plan, segments, this.times.of(competition));
	}

	/**
	 * A number that no two plans share: everything in it only ever grows, but for events
	 * and segments that are removed, on which nothing hung, and for a service that goes
	 * on from a copy.
	 */
	private int plan(CompetitionView competition, List<EventView> events, Collection<SegmentId> segments) {
		int versions = events.stream().mapToInt(EventView::version).sum();
		List<EventId> ids = events.stream().map(EventView::id).toList();
		int entries = this.entries.changes(ids) + this.names.stream().mapToInt((names) -> names.changes(ids)).sum();
		int life = LIFE * this.wentBack.stream().mapToInt(WentBack::times).sum();
		return life + competition.version() + versions + segments.size() + entries + this.draw.timesDrawn(segments)
				+ this.timetables.published(competition.id()) + this.protests.changes(segments)
				+ this.rulings.given(competition.id());
	}

	private Moment.SegmentMoment read(SegmentId segment, int plan, Moment.@Nullable SegmentMoment before) {
		Optional<SegmentResultView> result = this.standings.result(segment);
		int count = plan + result.map((view) -> view.version() + 1).orElse(0);
		if (before != null && before.count() == count) {
			return before;
		}
		Integer version = this.standings.latest(segment).map(ResultVersion::number).orElse(null);
		String onIce = result.map(SegmentResultView::onIce).map(EntryId::toString).orElse(null);
		return new Moment.SegmentMoment(segment.toString(), count, version, onIce);
	}

}
