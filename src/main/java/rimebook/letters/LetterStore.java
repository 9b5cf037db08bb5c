package rimebook.letters;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;

/** Letters as they lie in the database, with what was sent when. */
@Component
class LetterStore {

	private static final String LETTERS = """
			select l.*, a.id as again_as from letter l left join letter a on a.again_for = l.id where\s""";

	private static final String SENDINGS = """
			select s.*, l.state, count(l.id) as so_many from letter_sending s left join letter l on l.sending_id = s.id
			where %s group by s.id, s.competition_id, s.kind, s.way, s.letters, s.made_by, s.made_at, l.state
			order by s.made_at desc, s.id desc""";

	/** Letters of a competition, as part of a condition. */
	private static final String OF_COMPETITION = "sending_id in (select id from letter_sending where competition_id = ?)";

	private final JdbcClient database;

	LetterStore(JdbcClient database) {
		this.database = database;
	}

	/** Note that letters are sent; its letters follow. */
	void add(SendingView sending) {
		this.database.sql("insert into letter_sending values (?, ?, ?, ?, ?, ?, ?)")
			.params(sending.id(), sending.competition().value(), sending.kind().name(), sending.way().name(),
					sending.made().letters(), sending.made().by(), utc(sending.made().at()))
			.update();
	}

	/** Keep a letter; one that waits goes as soon as this is committed. */
	void add(UUID id, SendingView sending, Written letter) {
		boolean mailed = sending.way() == SendingView.Way.MAIL;
		this.database.sql("insert into letter values (?, ?, ?, ?, ?, ?, ?, ?, ?, 0, ?, null, ?, '', ?, null, ?)")
			.param(id)
			.param(sending.id())
			.param(letter.entry().value())
			.param(letter.to().name())
			.param(mailed ? letter.to().mail() : "")
			.param(letter.language().getLanguage())
			.param(letter.content().subject())
			.param(letter.content().body())
			.param((mailed ? LetterState.WAITING : LetterState.PRINTED).name())
			.param(mailed ? utc(sending.made().at()) : null)
			.param(mailed ? null : utc(sending.made().at()))
			.param(letter.againFor())
			.param(letter.linkAt())
			.update();
	}

	/** How many times letters of a competition were sent or printed. */
	int sendings(CompetitionId competition) {
		return this.database.sql("select count(*) from letter_sending where competition_id = ?")
			.param(competition.value())
			.query(Integer.class)
			.single();
	}

	/** Those of a competition, the newest first, with one question. */
	List<SendingView> ofCompetition(CompetitionId competition) {
		return sendings("s.competition_id = ?", competition.value());
	}

	Optional<SendingView> sending(UUID id) {
		return sendings("s.id = ?", id).stream().findFirst();
	}

	private List<SendingView> sendings(String condition, UUID id) {
		Map<UUID, SendingView> sendings = new LinkedHashMap<>();
		this.database.sql(SENDINGS.formatted(condition))
			.param(id)
			.query((row, at) -> sendings.merge(row.getObject("id", UUID.class), sending(row), LetterStore::both))
			.list();
		return new ArrayList<>(sendings.values());
	}

	private static SendingView both(SendingView one, SendingView other) {
		Map<LetterState, Integer> states = new EnumMap<>(LetterState.class);
		states.putAll(one.states());
		states.putAll(other.states());
		return new SendingView(one.id(), one.competition(), one.kind(), one.way(), one.made(), states);
	}

	private static SendingView sending(ResultSet row) throws SQLException {
		String state = row.getString("state");
		return new SendingView(row.getObject("id", UUID.class),
				new CompetitionId(row.getObject("competition_id", UUID.class)),
				LetterKind.valueOf(row.getString("kind")), SendingView.Way.valueOf(row.getString("way")),
				new SendingView.Made(row.getInt("letters"), row.getString("made_by"), instant(row, "made_at")),
				(state != null) ? Map.of(LetterState.valueOf(state), row.getInt("so_many")) : Map.of());
	}

	/** The letters of a sending in the order in which they were written. */
	List<LetterView> ofSending(UUID sending) {
		return this.database.sql(LETTERS + "l.sending_id = ? order by l.id")
			.param(sending)
			.query(LetterStore::letter)
			.list();
	}

	Optional<LetterView> letter(UUID id) {
		return this.database.sql(LETTERS + "l.id = ?").param(id).query(LetterStore::letter).optional();
	}

	/**
	 * Take a letter that waits back.
	 * @return whether it waited still
	 */
	boolean cancel(UUID id, Instant now) {
		return this.database.sql(
				"update letter set state = 'CANCELLED', due_at = null, settled_at = ? where id = ? and state = 'WAITING'")
			.params(utc(now), id)
			.update() == 1;
	}

	/** Take all of a sending back that wait still; returns how many. */
	int cancelAll(UUID sending, Instant now) {
		return this.database.sql("""
				update letter set state = 'CANCELLED', due_at = null, settled_at = ?
				where sending_id = ? and state = 'WAITING'""").params(utc(now), sending).update();
	}

	/** How many letters of a competition hold names, addresses and texts. */
	int filled(CompetitionId competition) {
		return this.database.sql("select count(*) from letter where emptied_at is null and " + OF_COMPETITION)
			.param(competition.value())
			.query(Integer.class)
			.single();
	}

	/** Delete names, addresses and texts; what waits does not go any more. */
	int empty(CompetitionId competition, Instant now) {
		this.database
			.sql("""
					update letter set state = 'CANCELLED', due_at = null, settled_at = ? where state = 'WAITING' and\s"""
					+ OF_COMPETITION)
			.params(utc(now), competition.value())
			.update();
		return this.database
			.sql("""
					update letter set recipient = '', address = '', subject = '', body = '', trouble = '', link_at = null, emptied_at = ?
					where emptied_at is null and\s"""
					+ OF_COMPETITION)
			.params(utc(now), competition.value())
			.update();
	}

	/** When each team of a competition was last written to by a letter of a kind. */
	Map<EntryId, Instant> written(CompetitionId competition, LetterKind kind) {
		Map<EntryId, Instant> written = new LinkedHashMap<>();
		this.database.sql("""
				select l.entry_id, max(s.made_at) as last_at from letter l join letter_sending s on s.id = l.sending_id
				where s.competition_id = ? and s.kind = ? and l.state not in ('CANCELLED', 'HELD', 'REFUSED')
				group by l.entry_id""")
			.params(competition.value(), kind.name())
			.query((row, at) -> written.put(new EntryId(row.getObject("entry_id", UUID.class)),
					instant(row, "last_at")))
			.list();
		return written;
	}

	/** How many letters of each competition somebody has to look at. */
	Map<CompetitionId, Integer> troubles() {
		Map<CompetitionId, Integer> troubles = new LinkedHashMap<>();
		this.database.sql("""
				select s.competition_id, count(*) as so_many from letter l join letter_sending s on s.id = l.sending_id
				where l.state in ('REFUSED', 'HELD', 'DOUBTFUL') and l.emptied_at is null
				and not exists (select 1 from letter a where a.again_for = l.id) group by s.competition_id""")
			.query((row, at) -> troubles.put(new CompetitionId(row.getObject("competition_id", UUID.class)),
					row.getInt("so_many")))
			.list();
		return troubles;
	}

	private static LetterView letter(ResultSet row, int at) throws SQLException {
		return new LetterView(row.getObject("id", UUID.class), row.getObject("sending_id", UUID.class),
				new EntryId(row.getObject("entry_id", UUID.class)),
				new Addressees.Addressee(row.getString("recipient"), row.getString("address")),
				Locale.forLanguageTag(row.getString("language")),
				new Draft.Content(row.getString("subject"), row.getString("body")),
				new LetterView.Course(LetterState.valueOf(row.getString("state")), row.getInt("attempts"),
						instantOrNull(row, "due_at"), instantOrNull(row, "settled_at"), row.getString("trouble")),
				new LetterView.Marks(row.getObject("again_for", UUID.class), row.getObject("again_as", UUID.class),
						instantOrNull(row, "emptied_at")),
				row.getObject("link_at", Integer.class));
	}

	static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	private static @Nullable Instant instantOrNull(ResultSet row, String column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

	static OffsetDateTime utc(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

	/**
	 * A letter that is kept.
	 *
	 * @param linkAt where in the body its personal link stands, {@code null} for none
	 * @param againFor the letter in whose place it goes, {@code null} for none
	 */
	record Written(EntryId entry, Addressees.Addressee to, Locale language, Draft.Content content,
			@Nullable Integer linkAt, @Nullable UUID againFor) {
	}

}
