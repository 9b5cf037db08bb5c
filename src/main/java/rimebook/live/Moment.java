package rimebook.live;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentView;

/**
 * Everything of a competition that can change while people watch, at one moment. Two
 * equal moments have the same pages.
 *
 * @param plan changes with the competition and its events, what is cancelled among them,
 * with entries, names and drawn orders
 * @param segments where each segment stands, by the segment's identity, in order
 */
record Moment(int plan, Map<String, SegmentMoment> segments) {

	Moment {
		segments = Collections.unmodifiableMap(new LinkedHashMap<>(segments));
	}

	/** What to tell somebody who knows of nothing yet. */
	List<Signal> all() {
		return this.segments.values().stream().map(SegmentMoment::signal).toList();
	}

	/** What to tell somebody who knows an earlier moment. */
	List<Signal> since(Moment earlier) {
		return this.segments.entrySet()
			.stream()
			.filter((entry) -> !Objects.equals(entry.getValue(), earlier.segments.get(entry.getKey())))
			.map((entry) -> entry.getValue().signal())
			.toList();
	}

	/** The counts of these segments, as a page keeps them to know what it has shown. */
	Map<String, Integer> seen(Collection<SegmentView> watched) {
		Map<String, Integer> seen = new LinkedHashMap<>();
		watched.forEach((segment) -> {
			String id = segment.id().toString();
			SegmentMoment moment = this.segments.get(id);
			seen.put(id, (moment != null) ? moment.count() : 0);
		});
		return seen;
	}

	/**
	 * Where one segment stands.
	 *
	 * @param segment its identity
	 * @param count changes with everything its pages show, the plan included
	 * @param version the number of its newest published standing, {@code null} for none
	 * @param onIce the entry on the ice, {@code null} for none
	 */
	record SegmentMoment(String segment, int count, @Nullable Integer version, @Nullable String onIce) {

		Signal signal() {
			return new Signal("segment", this.segment, this.count, this.version, this.onIce);
		}

	}

}
