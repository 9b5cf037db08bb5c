package rimebook.live;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;

/** Reads where a competition stands, with a few small queries. */
@Component
class Moments {

	private final Published published;

	private final Standings standings;

	Moments(Published published, Standings standings) {
		this.published = published;
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
		Map<String, Moment.SegmentMoment> segments = new LinkedHashMap<>();
		for (EventView event : events) {
			for (SegmentView segment : event.segments()) {
				String id = segment.id().toString();
				segments.put(id, read(segment.id(), (before != null) ? before.segments().get(id) : null));
			}
		}
		return new Moment(competition.version(), events.stream().map(EventView::version).toList(), segments);
	}

	private Moment.SegmentMoment read(SegmentId segment, Moment.@Nullable SegmentMoment before) {
		Optional<SegmentResultView> result = this.standings.result(segment);
		int count = result.map((view) -> view.version() + 1).orElse(0);
		if (before != null && before.count() == count) {
			return before;
		}
		Integer version = this.standings.latest(segment).map(ResultVersion::number).orElse(null);
		String onIce = result.map(SegmentResultView::onIce).map(EntryId::toString).orElse(null);
		return new Moment.SegmentMoment(segment.toString(), count, version, onIce);
	}

}
