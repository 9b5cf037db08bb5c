package rimebook.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;

/**
 * One archive that somebody asked for, from the touch of the button until it is taken
 * away. Its file has no name any more once it is whole, so that it is gone with the
 * service however that ends.
 */
final class ArchiveJob {

	private static final int AT_ONCE = 1 << 16;

	private final UUID id;

	private final CompetitionId competition;

	private final Variant variant;

	private final String askedBy;

	private final Instant askedAt;

	private volatile Progress progress = new Progress(Stage.WAITING, 0, 1, "", 0);

	private @Nullable FileChannel file;

	ArchiveJob(UUID id, CompetitionId competition, Variant variant, String askedBy, Instant askedAt) {
		this.id = id;
		this.competition = competition;
		this.variant = variant;
		this.askedBy = askedBy;
		this.askedAt = askedAt;
	}

	UUID id() {
		return this.id;
	}

	CompetitionId competition() {
		return this.competition;
	}

	Variant variant() {
		return this.variant;
	}

	String askedBy() {
		return this.askedBy;
	}

	Instant askedAt() {
		return this.askedAt;
	}

	Progress progress() {
		return this.progress;
	}

	boolean isFor(CompetitionId competition, Variant variant) {
		return this.competition.equals(competition) && this.variant == variant;
	}

	/** Tell whether it is still to come. */
	boolean isOpen() {
		return this.progress.stage() == Stage.WAITING || this.progress.stage() == Stage.MAKING;
	}

	synchronized void isAt(int done, int all) {
		if (isOpen()) {
			this.progress = new Progress(Stage.MAKING, done, all, "", 0);
		}
	}

	/** Give it up while it is still to come; nothing of it is ever given out. */
	synchronized void stop() {
		if (isOpen()) {
			this.progress = new Progress(Stage.STOPPED, 0, 1, "", 0);
		}
	}

	synchronized void failed(String why) {
		if (this.progress.stage() != Stage.STOPPED) {
			this.progress = new Progress(Stage.FAILED, 0, 1, why, 0);
		}
	}

	/**
	 * Take over a file that is whole, unless it was stopped; its name is gone then.
	 */
	synchronized void ready(Path whole) throws IOException {
		if (!isOpen()) {
			return;
		}
		FileChannel opened = FileChannel.open(whole, StandardOpenOption.READ, StandardOpenOption.DELETE_ON_CLOSE);
		this.file = opened;
		this.progress = new Progress(Stage.READY, 1, 1, "", opened.size());
	}

	/** Let the file go. */
	synchronized void drop() throws IOException {
		if (this.file != null) {
			this.file.close();
		}
	}

	/** Write the file to somebody; several may read at once. */
	void send(OutputStream out) throws IOException {
		FileChannel whole = Objects.requireNonNull(this.file, "Only what is ready is sent");
		WritableByteChannel to = Channels.newChannel(out);
		ByteBuffer some = ByteBuffer.allocate(AT_ONCE);
		long at = 0;
		for (int read = whole.read(some, at); read >= 0; read = whole.read(some, at)) {
			at += read;
			to.write(some.flip());
			some.clear();
		}
	}

	/** How far it is. */
	enum Stage {

		/** Another one is made first. */
		WAITING,

		/** It is being written. */
		MAKING,

		/** It can be taken away. */
		READY,

		/** Somebody stopped it: there is none. */
		STOPPED,

		/** There is none. */
		FAILED

	}

	/**
	 * How far it is in figures.
	 *
	 * @param done how many steps of all
	 * @param failure why there is none, empty where nothing failed
	 * @param bytes how large the file is, 0 before it is ready
	 */
	record Progress(Stage stage, int done, int all, String failure, long bytes) {
	}

}
