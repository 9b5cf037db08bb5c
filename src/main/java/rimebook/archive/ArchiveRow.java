package rimebook.archive;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.UUID;

/**
 * An archive as its page shows it.
 *
 * @param open whether it is without personal data
 * @param askedAt in the rink's time
 * @param keptUntil in the rink's time
 * @param megabytes how large, rounded up
 */
record ArchiveRow(UUID id, boolean open, String askedBy, ZonedDateTime askedAt, ZonedDateTime keptUntil,
		ArchiveJob.Progress progress, long megabytes) {

	private static final long MEGABYTE = 1_000_000;

	static ArchiveRow of(ArchiveJob job, ZoneId zone) {
		ArchiveJob.Progress progress = job.progress();
		ZonedDateTime asked = job.askedAt().atZone(zone);
		return new ArchiveRow(job.id(), job.variant() == Variant.PUBLIC, job.askedBy(), asked,
				asked.plus(ArchiveJobs.KEPT), progress, (progress.bytes() + MEGABYTE - 1) / MEGABYTE);
	}

	/** Tell whether it is still to come. */
	boolean isOpen() {
		return isAt(ArchiveJob.Stage.WAITING) || isAt(ArchiveJob.Stage.MAKING);
	}

	private boolean isAt(ArchiveJob.Stage stage) {
		return this.progress.stage() == stage;
	}

	/** The stage as a word of the page's texts. */
	public String stage() {
		return this.progress.stage().name().toLowerCase(Locale.ROOT);
	}

}
