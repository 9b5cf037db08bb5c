package rimebook.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.temporal.ChronoUnit;
import java.util.List;

import javax.sql.DataSource;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/** Makes archives while the service runs, with the documents that it has. */
@Service
class ArchiveMaking {

	private final DataSource database;

	private final ObjectProvider<ArchivedDocuments> documents;

	private final Acts acts;

	private final TransactionTemplate transaction;

	ArchiveMaking(DataSource database, ObjectProvider<ArchivedDocuments> documents, Acts acts,
			TransactionTemplate transaction) {
		this.database = database;
		this.documents = documents;
		this.acts = acts;
		this.transaction = transaction;
	}

	/**
	 * Write it to a file. That somebody asked for it is a line of the record, and of the
	 * archive.
	 * @throws IOException if the file cannot be written
	 */
	void make(ArchiveJob job, Actor actor, Path file, ArchiveWriting.Progress progress) throws IOException {
		CompetitionId competition = job.competition();
		Variant variant = job.variant();
		note(job, actor, "competition.archived");
		List<ArchivedDocument> all = this.documents.orderedStream()
			.flatMap((one) -> one.of(competition, variant).stream())
			.toList();
		try (Connection connection = this.database.getConnection()) {
			ArchiveWriting.write(connection, new ArchiveWriting.Order(competition.toString(), variant,
					this.acts.now().truncatedTo(ChronoUnit.MILLIS), all), file, progress);
		}
		catch (SQLException ex) {
			throw new IOException("The database could not be read: " + ex.getMessage(), ex);
		}
	}

	/** Say on the record that somebody takes the file away. */
	void taken(ArchiveJob job, Actor actor) {
		note(job, actor, "competition.archive-taken");
	}

	private void note(ArchiveJob job, Actor actor, String action) {
		this.transaction.executeWithoutResult((status) -> this.acts.publish(AuditedChange
			.of(actor, "competition", job.competition().value(), action)
			.to((job.variant() == Variant.PUBLIC) ? "the public archive" : "the whole archive, with personal data")));
	}

}
