package rimebook.results;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.published.Standing;

/**
 * Where and when competitions were held whose versions began before these told it
 * themselves; never changed.
 */
@Component
class EarlierVenues {

	private final JdbcClient database;

	EarlierVenues(JdbcClient database) {
		this.database = database;
	}

	Optional<Standing.Venue> of(CompetitionId competition) {
		return this.database.sql("select place, first_day, last_day, zone from earlier_venue where competition_id = ?")
			.param(competition.value())
			.query((row, at) -> new Standing.Venue(row.getString("place"), row.getObject("first_day", LocalDate.class),
					row.getObject("last_day", LocalDate.class), ZoneId.of(row.getString("zone"))))
			.optional();
	}

}
