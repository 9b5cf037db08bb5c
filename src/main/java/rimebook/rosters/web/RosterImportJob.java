package rimebook.rosters.web;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.rosters.RosterImport;
import rimebook.wording.Sentence;

/** A file of rosters that is being written, or was. */
final class RosterImportJob {

	private final UUID id;

	private final CompetitionId competition;

	private final Instant askedAt;

	private final int rows;

	private volatile int done;

	private volatile RosterImport.@Nullable Outcome outcome;

	private volatile @Nullable Sentence refusal;

	/** Dropped as soon as all of it was written: it holds birth dates. */
	private volatile @Nullable RosterImportForm form;

	RosterImportJob(UUID id, CompetitionId competition, Instant askedAt, int rows, RosterImportForm form) {
		this.id = id;
		this.competition = competition;
		this.askedAt = askedAt;
		this.rows = rows;
		this.form = form;
	}

	UUID id() {
		return this.id;
	}

	boolean isOf(CompetitionId competition) {
		return this.competition.equals(competition);
	}

	boolean isFrom(Instant before) {
		return this.askedAt.isBefore(before);
	}

	void isAt(int done) {
		this.done = done;
	}

	void written(RosterImport.Outcome outcome) {
		this.outcome = outcome;
		this.form = null;
	}

	void refused(Sentence why) {
		this.refusal = why;
	}

	@Nullable RosterImportForm form() {
		return this.form;
	}

	/** How many rows are done. */
	public int getDone() {
		return this.done;
	}

	/** How many there are. */
	public int getRows() {
		return this.rows;
	}

	public RosterImport.@Nullable Outcome getOutcome() {
		return this.outcome;
	}

	public @Nullable Sentence getRefusal() {
		return this.refusal;
	}

	/** Tell whether it is still being written. */
	public boolean isOpen() {
		return this.outcome == null && this.refusal == null;
	}

}
