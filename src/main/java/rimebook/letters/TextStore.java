package rimebook.letters;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;

/** The texts that competitions have changed, a row a version. */
@Component
class TextStore {

	private static final String OF = """
			select number, subject, body, written_by, written_at from letter_text
			where competition_id = ? and kind = ? and language = ? order by number desc""";

	private final JdbcClient database;

	TextStore(JdbcClient database) {
		this.database = database;
	}

	/** The newest first. */
	List<LetterTexts.Version> of(LetterTexts.Key key) {
		return asked(OF, key).query(TextStore::version).list();
	}

	Optional<LetterTexts.Version> newest(LetterTexts.Key key) {
		return asked(OF + " fetch first 1 row only", key).query(TextStore::version).optional();
	}

	private JdbcClient.StatementSpec asked(String question, LetterTexts.Key key) {
		return this.database.sql(question)
			.params(key.competition().value(), key.kind().name(), key.language().getLanguage());
	}

	void add(UUID id, LetterTexts.Key key, LetterTexts.Version version) {
		this.database.sql("insert into letter_text values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
			.params(id, key.competition().value(), key.kind().name(), key.language().getLanguage(), version.number(),
					version.content().subject(), version.content().body(), version.by(),
					Objects.requireNonNull(version.at()).atOffset(ZoneOffset.UTC))
			.update();
	}

	/** How many versions a competition has. */
	int count(CompetitionId competition) {
		return this.database.sql("select count(*) from letter_text where competition_id = ?")
			.param(competition.value())
			.query(Integer.class)
			.single();
	}

	/** Delete all of a competition: its letters then say what the house says. */
	int delete(CompetitionId competition) {
		return this.database.sql("delete from letter_text where competition_id = ?")
			.param(competition.value())
			.update();
	}

	private static LetterTexts.Version version(ResultSet row, int at) throws SQLException {
		Draft.Content content = new Draft.Content(row.getString("subject"), row.getString("body"));
		return new LetterTexts.Version(row.getInt("number"), content, content.equals(Draft.Content.EMPTY),
				row.getString("written_by"), row.getObject("written_at", OffsetDateTime.class).toInstant());
	}

}
