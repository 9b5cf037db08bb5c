package rimebook.rosters;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Who was said not to be whom, as it lies in the database. */
@Component
class ApartStore {

	private final JdbcClient database;

	ApartStore(JdbcClient database) {
		this.database = database;
	}

	/** Take hold of two people, always in the same order. */
	void hold(SkaterView.Id one, SkaterView.Id other) {
		inOrder(one, other).forEach((id) -> this.database.sql("select id from skater where id = ? for update")
			.param(id)
			.query()
			.listOfRows());
	}

	/** Keep that two people are two. */
	void add(UUID id, SkaterView.Id one, SkaterView.Id other, Namesakes.Said said) {
		List<UUID> both = inOrder(one, other);
		this.database.sql("insert into skater_apart values (?, ?, ?, ?, ?, ?, '', '', null)")
			.params(id, both.get(0), both.get(1), said.reason(), said.by(), said.at().atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Note that it was taken back.
	 * @return whether it held until now
	 */
	boolean takeBack(UUID id, Namesakes.Said said) {
		return this.database.sql("""
				update skater_apart set taken_back_reason = ?, taken_back_by = ?, taken_back_at = ?
				where id = ? and taken_back_at is null""")
			.params(said.reason(), said.by(), said.at().atOffset(ZoneOffset.UTC), id)
			.update() == 1;
	}

	/** All pairs that are held apart. */
	Set<Set<SkaterView.Id>> apart() {
		return new HashSet<>(this.database.sql("select one_id, other_id from skater_apart where taken_back_at is null")
			.query((row, at) -> Set.of(new SkaterView.Id(row.getObject("one_id", UUID.class)),
					new SkaterView.Id(row.getObject("other_id", UUID.class))))
			.list());
	}

	/** What was said of somebody, newest first. */
	List<Row> of(SkaterView.Id id) {
		return this.database
			.sql("select * from skater_apart where one_id = ? or other_id = ? order by said_at desc, id desc")
			.params(id.value(), id.value())
			.query(ApartStore::row)
			.list();
	}

	private static List<UUID> inOrder(SkaterView.Id one, SkaterView.Id other) {
		return Stream.of(one.value(), other.value()).sorted().toList();
	}

	private static Row row(ResultSet row, int at) throws SQLException {
		OffsetDateTime takenBack = row.getObject("taken_back_at", OffsetDateTime.class);
		return new Row(row.getObject("id", UUID.class), new SkaterView.Id(row.getObject("one_id", UUID.class)),
				new SkaterView.Id(row.getObject("other_id", UUID.class)),
				new Namesakes.Said(row.getString("reason"), row.getString("said_by"),
						row.getObject("said_at", OffsetDateTime.class).toInstant()),
				(takenBack != null) ? new Namesakes.Said(row.getString("taken_back_reason"),
						row.getString("taken_back_by"), takenBack.toInstant()) : null);
	}

	/** That two people are two. */
	record Row(UUID id, SkaterView.Id one, SkaterView.Id other, Namesakes.Said said,
			Namesakes.@Nullable Said takenBack) {

		SkaterView.Id otherThan(SkaterView.Id id) {
			return this.one.equals(id) ? this.other : this.one;
		}

	}

}
