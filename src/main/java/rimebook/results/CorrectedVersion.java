package rimebook.results;

import java.util.List;
import java.util.Objects;

/**
 * A version that was published because two officials corrected something, with the places
 * that moved by it. It stays readable on every later version, official ones among them.
 *
 * @param moved the teams whose place is another than in the version before
 */
public record CorrectedVersion(ResultVersion version, List<ResultEffect.Move> moved) {

	public CorrectedVersion {
		moved = List.copyOf(moved);
	}

	static CorrectedVersion of(ResultVersion version) {
		return new CorrectedVersion(version,
				version.standing()
					.rows()
					.stream()
					.filter((row) -> !Objects.equals(row.place(), row.previousPlace()))
					.map((row) -> new ResultEffect.Move(row.team(), row.previousPlace(), row.place()))
					.toList());
	}

}
