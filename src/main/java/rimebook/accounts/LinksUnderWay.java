package rimebook.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Links on their way to teams as they lie in the database. */
@Component
class LinksUnderWay {

	private final JdbcClient database;

	LinksUnderWay(JdbcClient database) {
		this.database = database;
	}

	/** Keep it. */
	void add(LinkUnderWay link) {
		this.database.sql("""
				insert into team_link_under_way (id, competition_id, entry_id, carried_by, token_digest, issued_by,
				issued_at, asked_at, expires_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)""")
			.params(link.id(), link.order().competition(), link.order().entry(), link.carriedBy(), link.tokenDigest(),
					link.issuedBy(), utc(link.issuedAt()), utc(link.askedAt()), utc(link.order().expiresAt()))
			.update();
	}

	Optional<LinkUnderWay> byToken(String digest) {
		return one("token_digest = ?", digest);
	}

	/** The link that something carries. */
	Optional<LinkUnderWay> byCarrier(UUID carriedBy) {
		return one("carried_by = ?", carriedBy);
	}

	/**
	 * Take hold of one until the transaction ends.
	 * @return whether it is there still
	 */
	boolean hold(LinkUnderWay link) {
		return one("id = ? for update", link.id()).isPresent();
	}

	/** The one that set out last for an entry. */
	Optional<LinkUnderWay> newest(UUID entry) {
		return one("entry_id = ? order by issued_at desc, id desc fetch first 1 row only", entry);
	}

	/** What is on its way to teams of a competition. */
	List<LinkUnderWay> of(UUID competition) {
		return this.database.sql("select * from team_link_under_way where competition_id = ? order by id")
			.param(competition)
			.query(LinksUnderWay::link)
			.list();
	}

	private Optional<LinkUnderWay> one(String condition, Object value) {
		return this.database.sql("select * from team_link_under_way where " + condition)
			.param(value)
			.query(LinksUnderWay::link)
			.optional();
	}

	/** Void what something carries. */
	void drop(UUID carriedBy) {
		this.database.sql("delete from team_link_under_way where carried_by = ?").param(carriedBy).update();
	}

	/** Void whatever is on its way to an entry. */
	void dropAll(UUID entry) {
		this.database.sql("delete from team_link_under_way where entry_id = ?").param(entry).update();
	}

	/** Void whatever set out for an entry up to that one. */
	void dropUpTo(LinkUnderWay link) {
		this.database.sql("delete from team_link_under_way where entry_id = ? and (issued_at <= ? or id = ?)")
			.params(link.order().entry(), utc(link.issuedAt()), link.id())
			.update();
	}

	private static LinkUnderWay link(ResultSet row, int at) throws SQLException {
		return new LinkUnderWay(row.getObject("id", UUID.class),
				new TeamLinks.GiveLink(row.getObject("competition_id", UUID.class),
						row.getObject("entry_id", UUID.class), instant(row, "expires_at")),
				row.getObject("carried_by", UUID.class), row.getString("token_digest"), row.getString("issued_by"),
				instant(row, "issued_at"), instant(row, "asked_at"));
	}

	private static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	private static OffsetDateTime utc(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

}
