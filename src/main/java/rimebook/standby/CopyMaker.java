package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import tools.jackson.databind.json.JsonMapper;

import rimebook.audit.RecordAnchors;
import rimebook.shared.KeptFolder;

/**
 * Keeps the second place up to date, one look after another, always by the same thread: a
 * whole copy if anything was done since the last and it is old enough, else the new lines
 * of the record, else a sign of life; then what lies beside the database.
 */
final class CopyMaker {

	/** What never comes to the record, such as tablets that joined, is copied by then. */
	private static final Duration AT_LEAST = Duration.ofMinutes(10);

	private static final Duration SIGN_EVERY = Duration.ofSeconds(15);

	/** For so long another service is told of after its last sign. */
	private static final Duration REMEMBERED = Duration.ofMinutes(1);

	/** A copy that takes longer than a minute is behind, so it does not rest for long. */
	private static final Duration MOST_REST = Duration.ofSeconds(15);

	/** As much music as is copied with a look, in bytes. */
	static final long PORTION = 32L << 20;

	private static final JsonMapper JSON = JsonMapper.shared();

	private final CopyFolder folder;

	private final SecondPlace place;

	private final Source source;

	private final PlaceAnchors anchors;

	private final Duration every;

	private final Clock clock;

	private final Pace pace = new Pace(MOST_REST);

	private CopyState.@Nullable Kept kept;

	private RecordHead written = new RecordHead(0, "");

	/** A place that failed is well again only once a sign was written there. */
	private boolean owed;

	private Instant signed = Instant.EPOCH;

	private Instant met = Instant.EPOCH;

	CopyMaker(CopyFolder folder, Source source, Duration every, Clock clock) {
		this.folder = folder;
		this.place = new SecondPlace(folder, source.file());
		this.source = source;
		this.anchors = new PlaceAnchors(source.anchors(), folder);
		this.every = every;
		this.clock = clock;
	}

	/**
	 * Do what is due.
	 * @return what lies there now
	 * @throws IOException if the place cannot be written
	 */
	CopyState.Kept look() throws IOException {
		boolean failed = this.owed;
		this.owed = true;
		boolean sameDisk = this.place.require();
		Instant now = this.clock.instant();
		CopyState.Place place = new CopyState.Place(sameDisk, isShared(now));
		RecordHead head = this.source.tail().head();
		CopyState.Kept last = this.kept;
		CopyState.Kept next;
		if (last == null || isCopyDue(last, head, now)) {
			next = copy(now, place);
		}
		else {
			if (Files.notExists(this.folder.note(last.copy().name()))) {
				this.kept = null;
				throw new NoSuchFileException(this.folder.note(last.copy().name()).toString());
			}
			next = new CopyState.Kept(last.copy(), now, writeSince(last.copy()), place);
		}
		boolean due = failed || isSignDue(next, now);
		this.kept = next;
		if (due) {
			sign(next, now);
		}
		CopyState.Kept all = next.lacking(copyBeside());
		this.kept = all;
		this.owed = false;
		return all;
	}

	/**
	 * Cards do not wait for music: it follows the database, a portion with each look, and
	 * so a copy never tells of a file that was there later than itself.
	 */
	private int copyBeside() throws IOException {
		int lacking = 0;
		for (KeptFolder kept : this.source.folders()) {
			lacking += kept.copyTo(this.folder.path().resolve(kept.name()), PORTION);
		}
		return lacking;
	}

	/** Whether somebody waits for this thread, so that it does not rest. */
	void hurry(boolean hurried) {
		this.pace.hurry(hurried);
	}

	private boolean isCopyDue(CopyState.Kept last, RecordHead head, Instant now) {
		Duration age = Duration.between(last.copy().at(), now);
		boolean changed = head.line() != last.copy().head().line();
		return age.isNegative() || age.compareTo(changed ? this.every : AT_LEAST) >= 0;
	}

	private CopyState.Kept copy(Instant now, CopyState.Place place) throws IOException {
		this.folder.thin(now);
		String life = this.source.lives().current().id().toString();
		this.pace.begin();
		CopyNote note = new CopyFile(this.folder, this.source.file().access(), life, this.pace).make(now,
				(part) -> this.source.backup(part, this.pace), this.anchors::text);
		this.written = note.head();
		this.folder.thin(now);
		return new CopyState.Kept(note, now, note.head(), place);
	}

	private RecordHead writeSince(CopyNote copy) throws IOException {
		List<LostLine> lines = this.source.tail().after(this.written.line());
		if (!lines.isEmpty()) {
			// On a line of its own, whatever was cut short there.
			StringBuilder text = new StringBuilder("\n");
			lines.forEach((line) -> text.append(JSON.writeValueAsString(line)).append('\n'));
			WholeFile.append(this.folder.since(copy.name()), text.toString());
			this.written = headOf(lines.get(lines.size() - 1));
		}
		return this.written;
	}

	private static RecordHead headOf(LostLine line) {
		return new RecordHead(line.number(), line.digest());
	}

	/**
	 * Tell whether, since this service gave its sign, another gave one at the same place:
	 * then two laptops run at once, of which the crew knows but one.
	 */
	private boolean isShared(Instant now) {
		String life = this.source.lives().current().id().toString();
		boolean other = !this.signed.equals(Instant.EPOCH)
				&& SignOfLife.read(this.folder.alive()).filter((sign) -> !sign.life().equals(life)).isPresent();
		this.met = other ? now : this.met;
		return Duration.between(this.met, now).compareTo(REMEMBERED) < 0;
	}

	private boolean isSignDue(CopyState.Kept next, Instant now) {
		CopyState.Kept last = this.kept;
		return last == null || !last.head().equals(next.head())
				|| Duration.between(this.signed, now).compareTo(SIGN_EVERY) >= 0;
	}

	private void sign(CopyState.Kept next, Instant now) throws IOException {
		new SignOfLife(now, next.head(), next.copy().life()).write(this.folder.alive(), this.anchors.text(next.head()));
		this.signed = now;
		this.anchors.kept(next.head(), now);
	}

	/**
	 * What is copied.
	 *
	 * @param folders what lies beside the database, of which only what is new
	 */
	record Source(JdbcTemplate jdbc, RecordTail tail, RecordAnchors anchors, ServiceLives lives, DatabaseFile file,
			List<KeptFolder> folders) {

		Source {
			folders = List.copyOf(folders);
		}

		void backup(Path into, Pace pace) throws IOException {
			Objects.requireNonNull(this.jdbc.execute((ConnectionCallback<OnlineBackup>) OnlineBackup::of))
				.into(into, pace);
		}

	}

}
