package rimebook.live.pictures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;

/**
 * The places of all teams after each team of a segment, as they were published: a line a
 * team, from left to right, first place on top. Where two teams that were both there
 * before changed their order the strokes of both are marked.
 *
 * @param steps after how many teams each column stands
 * @param places how many lanes there are
 * @param lines a line a team, in the order of the newest standing
 * @param flips how often two earlier teams changed their order
 */
public record Course(List<Integer> steps, int places, List<Line> lines, int flips) {

	public Course {
		steps = List.copyOf(steps);
		lines = List.copyOf(lines);
	}

	/**
	 * Draw what was published.
	 * @param published standings of one segment, oldest first; of several after the same
	 * team the last counts
	 */
	public static Course of(Collection<Standing> published) {
		Map<Integer, Standing> bySkated = new TreeMap<>();
		published.forEach((standing) -> bySkated.put(standing.skated(), standing));
		List<Standing> columns = List.copyOf(bySkated.values());
		if (columns.isEmpty()) {
			return new Course(List.of(), 0, List.of(), 0);
		}
		List<Track> tracks = tracks(columns);
		int flips = flips(tracks, columns.size());
		int places = tracks.stream()
			.flatMap((track) -> track.places().stream())
			.filter(Objects::nonNull)
			.mapToInt(Integer::intValue)
			.max()
			.orElse(0);
		return new Course(List.copyOf(bySkated.keySet()), places,
				tracks.stream().map((track) -> track.drawn(tracks, columns.size(), places)).toList(), flips);
	}

	/** Who is on each place at the end, nobody where a place is left out or shared. */
	public List<List<String>> lanes() {
		List<List<String>> lanes = new ArrayList<>();
		for (int place = 1; place <= this.places; place++) {
			int lane = place;
			lanes.add(this.lines.stream()
				.map(Line::row)
				.filter((row) -> Objects.equals(row.place(), lane))
				.map(Standing.Row::team)
				.toList());
		}
		return lanes;
	}

	private static List<Track> tracks(List<Standing> columns) {
		List<Map<String, Integer>> places = columns.stream().map(Course::places).toList();
		return columns.get(columns.size() - 1)
			.rows()
			.stream()
			.map((row) -> new Track(row, across(places, row.entry())))
			.filter((track) -> track.places().stream().anyMatch(Objects::nonNull))
			.toList();
	}

	private static Map<String, Integer> places(Standing standing) {
		Map<String, Integer> places = new LinkedHashMap<>();
		for (Standing.Row row : standing.rows()) {
			Integer place = row.place();
			if (place != null) {
				places.put(row.entry(), place);
			}
		}
		return places;
	}

	private static List<@Nullable Integer> across(List<Map<String, Integer>> columns, String entry) {
		List<@Nullable Integer> places = new ArrayList<>();
		columns.forEach((column) -> places.add(column.get(entry)));
		return places;
	}

	private static int flips(List<Track> tracks, int columns) {
		int flips = 0;
		for (int one = 0; one < tracks.size(); one++) {
			for (int other = one + 1; other < tracks.size(); other++) {
				for (int to = 1; to < columns; to++) {
					flips += tracks.get(one).flips(tracks.get(other), to) ? 1 : 0;
				}
			}
		}
		return flips;
	}

	/** A team's places, {@code null} where it has none. */
	private record Track(Standing.Row row, List<@Nullable Integer> places) {

		/** Tell whether two teams changed their order on the way to a column. */
		boolean flips(Track other, int to) {
			Integer before = this.places.get(to - 1);
			Integer theirsBefore = other.places.get(to - 1);
			Integer now = this.places.get(to);
			Integer theirsNow = other.places.get(to);
			return before != null && theirsBefore != null && now != null && theirsNow != null
					&& Integer.compare(before, theirsBefore) != Integer.compare(now, theirsNow);
		}

		Line drawn(List<Track> all, int columns, int lanes) {
			List<Stroke> strokes = new ArrayList<>();
			List<Point> points = new ArrayList<>();
			for (int at = 0; at < columns; at++) {
				Integer place = this.places.get(at);
				Integer before = (at > 0) ? this.places.get(at - 1) : null;
				if (place == null) {
					continue;
				}
				Point point = point(at, place, columns, lanes);
				if (before == null) {
					points.add(point);
				}
				else {
					strokes.add(new Stroke(point(at - 1, before, columns, lanes), point, isFlip(all, at)));
				}
			}
			Integer last = this.places.get(columns - 1);
			if (last != null) {
				points.add(point(columns - 1, last, columns, lanes));
			}
			return new Line(this.row, this.places, points, strokes);
		}

		private boolean isFlip(List<Track> all, int at) {
			return all.stream().anyMatch((other) -> other != this && flips(other, at));
		}

		/** In the middle of its column and of its lane. */
		private static Point point(int at, int place, int columns, int lanes) {
			return new Point(Percent.of(2L * at + 1, 2L * columns), Percent.of(2L * place - 1, 2L * lanes));
		}

	}

	/** A place at a time. */
	public record Point(String x, String y) {
	}

	/**
	 * From one column to the next.
	 *
	 * @param flip whether the team and another changed their order there
	 */
	public record Stroke(Point from, Point to, boolean flip) {
	}

	/**
	 * One team.
	 *
	 * @param places after each step, {@code null} where it has none
	 * @param points where it began and where it is now
	 */
	public record Line(Standing.Row row, List<@Nullable Integer> places, List<Point> points, List<Stroke> strokes) {

		public Line {
			points = List.copyOf(points);
			strokes = List.copyOf(strokes);
		}

		/** The places it had, one after the other. */
		public List<Integer> had() {
			List<Integer> had = new ArrayList<>();
			for (Integer place : this.places) {
				if (place != null) {
					had.add(place);
				}
			}
			return had;
		}

	}

}
