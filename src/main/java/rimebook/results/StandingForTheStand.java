package rimebook.results;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.performances.StandingAfterCards;
import rimebook.published.Standing;

/** Tells the referee what the cards just closed have made. */
@Component
class StandingForTheStand implements StandingAfterCards {

	private final Standings standings;

	StandingForTheStand(Standings standings) {
		this.standings = standings;
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<Placed> newest(SegmentId segment) {
		return this.standings.latest(segment).map(StandingForTheStand::placed);
	}

	private static Placed placed(ResultVersion version) {
		Standing standing = version.standing();
		List<Line> lines = standing.rows().stream().flatMap(StandingForTheStand::line).toList();
		return new Placed(version.number(), standing.skated(), standing.starters(), lines);
	}

	private static Stream<Line> line(Standing.Row row) {
		return Stream.ofNullable(row.place())
			.map((place) -> new Line(place, row.previousPlace(), row.startNumber(), row.team()));
	}

}
