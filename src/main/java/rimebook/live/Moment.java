package rimebook.live;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentView;

/**
 * Everything of a competition that can change while people watch, at one moment. Two
 * equal moments have the same pages.
 *
 * @param plan changes with the competition and its events, what is cancelled among them,
 * with entries, names and drawn orders
 * @param segments where each segment stands, by the segment's identity, in order
 * @param times what is expected of teams that are still to come
 */
record Moment(int plan, Map<String, SegmentMoment> segments, Times times) {

	Moment {
		segments = Collections.unmodifiableMap(new LinkedHashMap<>(segments));
	}

	/** A moment without a timetable. */
	Moment(int plan, Map<String, SegmentMoment> segments) {
		this(plan, segments, Times.NONE);
	}

	/** What to tell somebody who knows of nothing yet. */
	List<Signal> all() {
		return Stream.concat(this.segments.values().stream().map(SegmentMoment::signal), this.times.signals()).toList();
	}

	/** What to tell somebody who knows an earlier moment. */
	List<Signal> since(Moment earlier) {
		Stream<Signal> moved = this.segments.entrySet()
			.stream()
			.filter((entry) -> !Objects.equals(entry.getValue(), earlier.segments.get(entry.getKey())))
			.map((entry) -> entry.getValue().signal());
		return Stream.concat(moved, this.times.equals(earlier.times) ? Stream.empty() : this.times.signals()).toList();
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

	/** The same for a page that tells when teams are expected, too. */
	Map<String, Integer> seenWithTimes(Collection<SegmentView> watched) {
		Map<String, Integer> seen = seen(watched);
		this.times.signals().forEach((signal) -> seen.put(signal.id(), signal.moment()));
		return seen;
	}

	/**
	 * What is expected of teams that are still to come, which moves when time passes and
	 * nobody is called.
	 *
	 * @param competition its identity; empty before a timetable is published
	 * @param count differs as soon as any expected time does, to the minute; the same on
	 * every node, and on all other days
	 */
	record Times(String competition, int count) {

		/** No timetable is published. */
		static final Times NONE = new Times("", 0);

		Stream<Signal> signals() {
			return this.competition.isEmpty() ? Stream.empty()
					: Stream.of(new Signal("times", this.competition, this.count, null, null));
		}

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
