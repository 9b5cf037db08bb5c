package rimebook.documents;

import java.io.IOException;
import java.io.OutputStream;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.shared.NotFoundException;

/**
 * Where the documents of a bundle lie until somebody takes them: in the database, so that
 * another node can give out what one has made.
 */
@Component
class BundleStore {

	private static final String VIEW = """
			select b.*, (select count(*) from paper_bundle_document d where d.bundle_id = b.id) as made
			from paper_bundle b where\s""";

	private final JdbcClient database;

	BundleStore(JdbcClient database) {
		this.database = database;
	}

	Optional<BundleView> find(UUID id) {
		return this.database.sql(VIEW + "b.id = ?").param(id).query(BundleStore::view).optional();
	}

	/** The newest of a competition. */
	Optional<BundleView> newest(CompetitionId competition) {
		return this.database.sql(VIEW + "b.competition_id = ? order by b.asked_at desc fetch first 1 row only")
			.param(competition.value())
			.query(BundleStore::view)
			.optional();
	}

	/** Keep a new one in place of the earlier ones of its competition and of old ones. */
	@Transactional
	void begin(UUID id, BundleView.Order order, Instant old) {
		this.database.sql("delete from paper_bundle where competition_id = ? or asked_at < ?")
			.params(order.competition().value(), utc(old))
			.update();
		this.database.sql("insert into paper_bundle values (?, ?, ?, ?, ?, ?, ?, null, '')")
			.params(id, order.competition().value(), order.paper().name(), order.language().toLanguageTag(), order.by(),
					utc(order.at()), utc(order.at()))
			.update();
	}

	/** Say how many there will be. */
	void count(UUID id, int documents, Instant now) {
		this.database.sql("update paper_bundle set documents = ?, heard_at = ? where id = ?")
			.params(documents, utc(now), id)
			.update();
	}

	/**
	 * Keep the next document.
	 * @return whether the bundle is still wanted
	 */
	@Transactional
	boolean add(UUID id, int number, Documents.Printed printed, Instant now) {
		boolean wanted = this.database.sql("update paper_bundle set heard_at = ? where id = ?")
			.params(utc(now), id)
			.update() == 1;
		if (wanted) {
			this.database.sql("insert into paper_bundle_document values (?, ?, ?, ?)")
				.params(id, number, printed.name(), printed.bytes())
				.update();
		}
		return wanted;
	}

	/** Say why it will not become whole. */
	void fail(UUID id, BundleView.Trouble trouble) {
		this.database.sql("update paper_bundle set trouble = ? where id = ?").params(trouble.name(), id).update();
	}

	/**
	 * Write a whole one, a document at a time, so that few of them are in memory. The zip
	 * is ended with its last document and not closed before, which would end it, too.
	 */
	void write(BundleView bundle, OutputStream out) throws IOException {
		ZipOutputStream zip = new ZipOutputStream(out);
		for (int number = 1; number <= bundle.made(); number++) {
			Documents.Printed printed = document(bundle.id(), number);
			ZipEntry entry = new ZipEntry(printed.name());
			entry.setTime(bundle.order().at().toEpochMilli());
			zip.putNextEntry(entry);
			zip.write(printed.bytes());
			zip.closeEntry();
		}
		zip.finish();
	}

	private Documents.Printed document(UUID bundle, int number) {
		return this.database.sql("select name, content from paper_bundle_document where bundle_id = ? and number = ?")
			.params(bundle, number)
			.query((row, at) -> new Documents.Printed(row.getString("name"), row.getBytes("content")))
			.optional()
			.orElseThrow(() -> NotFoundException.of("document", bundle));
	}

	private static BundleView view(ResultSet row, int at) throws SQLException {
		BundleView.Order order = new BundleView.Order(new CompetitionId(row.getObject("competition_id", UUID.class)),
				PaperSize.valueOf(row.getString("paper")), Locale.forLanguageTag(row.getString("language")),
				row.getString("asked_by"), instant(row, "asked_at"));
		return new BundleView(row.getObject("id", UUID.class), order, row.getInt("made"), documents(row),
				instant(row, "heard_at"), BundleView.Trouble.of(row.getString("trouble")));
	}

	private static @Nullable Integer documents(ResultSet row) throws SQLException {
		int documents = row.getInt("documents");
		return row.wasNull() ? null : documents;
	}

	private static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	private static OffsetDateTime utc(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

}
