package rimebook.audit;

import java.io.IOException;
import java.io.Serializable;
import java.security.PublicKey;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * Compares the record with anchors that were kept outside. One that fits says that its
 * line and all lines before it are as they were when it was given out; nobody can make
 * other lines fit it. What came after the newest that fits is covered by none. One of a
 * line that was lost when the service started from a copy is told as such and contradicts
 * nothing. Needs a connection and nothing else.
 */
public final class AnchorCheck {

	private static final String LINE = "select digest, written_at from record_line where number = ?";

	private static final String VERSIONS = """
			select count(*), count(case when number <= ? then 1 end) from record_line
			where subject = 'result' and action = 'result.published'""";

	/** Clocks of two devices may differ by that much and both be right enough. */
	private static final Duration APART = Duration.ofMinutes(5);

	private static final int TOLD = 50;

	private final Connection connection;

	private final RecordFinding chain;

	private final @Nullable PublicKey key;

	private final List<LostLines> starts;

	private final Set<String> lost = new LinkedHashSet<>();

	private final Set<LostLines> told = new LinkedHashSet<>();

	private final List<String> faults = new ArrayList<>();

	private final List<String> notes = new ArrayList<>();

	private long fitting;

	private long newest;

	private AnchorCheck(Connection connection, RecordFinding chain, @Nullable PublicKey key) throws SQLException {
		this.connection = connection;
		this.chain = chain;
		this.key = key;
		this.starts = LostLines.in(connection, chain.lines());
	}

	/**
	 * Compare each anchor.
	 * @param connection an open connection to the database, left open
	 * @param chain what was found of the chain; what lies behind a break fits nothing
	 * @param publicKey the public key as PEM, empty if signatures are not to be checked
	 * @throws SQLException if the record cannot be read
	 * @throws IOException if that is no public key
	 */
	public static Finding check(Connection connection, List<Anchor> anchors, RecordFinding chain, String publicKey)
			throws SQLException, IOException {
		PublicKey key = publicKey.isBlank() ? null : RecordKey.publicKey(publicKey);
		AnchorCheck check = new AnchorCheck(connection, chain, key);
		for (Anchor anchor : new LinkedHashSet<>(anchors)) {
			check.compare(anchor);
		}
		return check.finding(key == null && anchors.stream().anyMatch(Anchor::isSigned));
	}

	private void compare(Anchor anchor) throws SQLException {
		if (this.key != null && !RecordKey.isSignedBy(this.key, anchor)) {
			fault(anchor, "has no signature of that key. Anybody may have written it, so it was not compared.");
			return;
		}
		if (anchor.line() > this.chain.lines() && !this.chain.isWhole()) {
			fault(anchor, "is of a line behind the break and cannot be compared.");
			return;
		}
		if (anchor.line() < 1 || anchor.line() > this.chain.lines()) {
			contradicts(anchor,
					"is of a line that is not there: the record was cut, was restored from an earlier copy, "
							+ "or is another one.");
			return;
		}
		try (PreparedStatement statement = this.connection.prepareStatement(LINE)) {
			statement.setLong(1, anchor.line());
			try (ResultSet row = statement.executeQuery()) {
				row.next();
				compare(anchor, row.getString(1), row.getObject(2, OffsetDateTime.class).toInstant());
			}
		}
	}

	private void compare(Anchor anchor, String digest, Instant writtenAt) {
		if (!digest.startsWith(anchor.digest())) {
			contradicts(anchor,
					"is not that of the line which stands there now: this line or one before it was written "
							+ "anew since, the service went on from an earlier copy, or it is the anchor of another record.");
			return;
		}
		if (anchor.writtenAt() != null && !anchor.writtenAt().equals(writtenAt)) {
			fault(anchor, "has the digest of its line but another time: the anchor itself was changed.");
			return;
		}
		this.fitting++;
		this.newest = Math.max(this.newest, anchor.line());
		if (anchor.seenAt() != null && anchor.seenAt().plus(APART).isBefore(writtenAt)) {
			this.notes.add("Line " + anchor.line() + " says that it was written at " + ChainDigest.time(writtenAt)
					+ ", but a device had it at " + ChainDigest.time(anchor.seenAt())
					+ " by its own clock: one of the two clocks was wrong.");
		}
	}

	/** It fits nothing: its line was lost with a machine, or was changed. */
	private void contradicts(Anchor anchor, String why) {
		Optional<LostLines> start = this.starts.stream().filter((one) -> one.hold(anchor)).findFirst();
		if (start.isPresent()) {
			this.lost.add(start.get().sentence(anchor));
			this.told.add(start.get());
			return;
		}
		fault(anchor,
				why + this.starts.stream()
					.filter((one) -> one.mayHold(anchor))
					.findFirst()
					.map(LostLines::doubt)
					.orElse(""));
	}

	private void fault(Anchor anchor, String why) {
		this.faults.add("The anchor of line " + anchor.line() + ", " + anchor.shortDigest() + "…, " + why);
	}

	private Finding finding(boolean unchecked) throws SQLException {
		if (unchecked) {
			this.notes.add("Signatures were not checked: no public key was given.");
		}
		try (PreparedStatement statement = this.connection.prepareStatement(VERSIONS)) {
			statement.setLong(1, this.newest);
			try (ResultSet row = statement.executeQuery()) {
				row.next();
				return new Finding(new Covered(this.newest, this.chain.lines(), row.getLong(1), row.getLong(2)),
						this.fitting, this.key != null, first(this.faults), allNotes());
			}
		}
	}

	private List<String> allNotes() {
		List<String> all = new ArrayList<>(first(List.copyOf(this.lost)));
		this.told.stream().map(LostLines::proviso).forEach(all::add);
		all.addAll(first(this.notes));
		return all;
	}

	/**
	 * Many faults have one cause; whoever brings thousands of anchors is told of some.
	 */
	private static List<String> first(List<String> sentences) {
		if (sentences.size() <= TOLD) {
			return sentences;
		}
		List<String> some = new ArrayList<>(sentences.subList(0, TOLD));
		some.add("There are " + (sentences.size() - TOLD) + " more of these.");
		return some;
	}

	/**
	 * How far the anchors that fit reach.
	 *
	 * @param newest the last line that one fits, 0 if none fits
	 * @param lines how many lines there are
	 * @param versions how many published versions stand on the record
	 * @param versionsCovered how many of these stand at or before the newest
	 */
	public record Covered(long newest, long lines, long versions, long versionsCovered) implements Serializable {
	}

	/**
	 * Whether the record is the one of which the anchors were kept.
	 *
	 * @param fitting how many anchors fit
	 * @param signed whether only those with a good signature count
	 * @param faults what does not fit, a sentence each, and how many more there are
	 * @param notes what else is to be known, a sentence each
	 */
	public record Finding(Covered covered, long fitting, boolean signed, List<String> faults,
			List<String> notes) implements Serializable {

		public Finding {
			faults = List.copyOf(faults);
			notes = List.copyOf(notes);
		}

		/** Tell whether every anchor fits, and there was one. */
		public boolean agrees() {
			return this.faults.isEmpty() && this.fitting > 0;
		}

		/** What is proved, and what is not, in a few sentences. */
		public String sentence() {
			if (this.fitting == 0) {
				return "No anchor fits: nothing kept outside says that any line is as it was written.";
			}
			long after = this.covered.lines() - this.covered.newest();
			return counted(this.fitting, "anchor fits", "anchors fit") + ", the newest that of line "
					+ this.covered.newest() + ": lines 1 to " + this.covered.newest()
					+ " are as they were when it was given out, and with them " + this.covered.versionsCovered()
					+ " of " + counted(this.covered.versions(), "published version", "published versions") + ". "
					+ ((after == 0) ? "No line came after it."
							: counted(after, "line that came", "lines that came")
									+ " after it could be written anew without any of these anchors telling.")
					+ (this.signed ? ""
							: " That holds as far as whoever kept the anchors is believed: who wrote the record anew can "
									+ "write anchors, too, unless they are signed by a key that they do not have.");
		}

		private static String counted(long number, String one, String several) {
			return number + " " + ((number == 1) ? one : several);
		}

	}

}
