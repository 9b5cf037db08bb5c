package rimebook.commentary;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.published.Standing;
import rimebook.results.ResultVersion;

/** Lays a published standing out as lines that can be read at a glance. */
final class PublishedTable {

	private PublishedTable() {
	}

	/** Lay it out; empty before the first version. */
	static List<CommentaryView.Placed> of(@Nullable ResultVersion version) {
		if (version == null) {
			return List.of();
		}
		Standing standing = version.standing();
		Integer first = standing.isByPoints() ? standing.rows()
			.stream()
			.filter((row) -> Objects.equals(row.place(), 1))
			.map(Standing.Row::total)
			.filter(Objects::nonNull)
			.findFirst()
			.orElse(null) : null;
		return standing.rows().stream().map((row) -> placed(row, first)).toList();
	}

	private static CommentaryView.Placed placed(Standing.Row row, @Nullable Integer first) {
		Integer total = (row.place() != null || row.waits()) ? row.total() : null;
		Integer behind = (first != null && total != null && row.place() != null) ? first - total : null;
		return new CommentaryView.Placed(row.entry(), row.place(), row.shared(), row.team(), status(row), total,
				behind);
	}

	/** The last part of the key of how a team came through; empty where it skated. */
	static String status(Standing.Row row) {
		return row.status().equals("SKATED") ? "" : row.status().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/** The row of a team, {@code null} where it has none. */
	static Standing.@Nullable Row row(@Nullable ResultVersion version, String entry) {
		return (version == null) ? null
				: version.standing()
					.rows()
					.stream()
					.filter((row) -> row.entry().equals(entry))
					.findFirst()
					.orElse(null);
	}

}
