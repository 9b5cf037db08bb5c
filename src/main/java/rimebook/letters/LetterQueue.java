package rimebook.letters;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Letters that wait for the mail server. Any number of services may take from one
 * database: each letter is claimed by one of them, in a transaction that ends before the
 * server is spoken to, and noted in another one afterwards.
 */
@Component
class LetterQueue {

	/** After each attempt that failed, so long until the next; then it is given up. */
	static final List<Duration> PAUSES = List.of(Duration.ofMinutes(1), Duration.ofMinutes(5), Duration.ofMinutes(25),
			Duration.ofHours(2));

	/**
	 * Longer than any server is waited for: what was claimed before that belongs to a
	 * service that ended.
	 */
	static final Duration STRANDED = Duration.ofMinutes(15);

	private static final int LONGEST_TROUBLE = 1000;

	private final JdbcClient database;

	LetterQueue(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Claim the letter that is due first. Others pass over what one is just claiming.
	 * @return empty where none is due
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public Optional<Claimed> claim(Instant now) {
		Optional<Claimed> next = this.database.sql("""
				select id, recipient, address, language, subject, body, link_at, attempts from letter
				where state = 'WAITING' and due_at <= ? order by due_at, id fetch first 1 row only
				for update skip locked""").param(LetterStore.utc(now)).query(LetterQueue::claimed).optional();
		next.ifPresent((letter) -> this.database.sql("""
				update letter set state = 'SENDING', attempts = ?, claimed_at = ?, due_at = null where id = ?""")
			.params(letter.attempt(), LetterStore.utc(now), letter.id())
			.update());
		return next;
	}

	/**
	 * Note that the server took it, also where it was given up for doubtful meanwhile.
	 */
	void sent(Claimed letter, Instant now) {
		settle(letter, LetterState.SENT, "", now);
	}

	/** Note that it went wrong for good. */
	void settle(Claimed letter, LetterState state, String trouble, Instant now) {
		this.database.sql("""
				update letter set state = ?, trouble = ?, settled_at = ?
				where id = ? and attempts = ? and state in ('SENDING', 'DOUBTFUL')""")
			.params(state.name(), shortened(trouble), LetterStore.utc(now), letter.id(), letter.attempt())
			.update();
	}

	/** Note that it was not handed over at all, and why. */
	void hold(Claimed letter, String why, Instant now) {
		this.database.sql("""
				update letter set state = 'HELD', trouble = ?, settled_at = ?, attempts = attempts - 1
				where id = ? and attempts = ? and state in ('SENDING', 'DOUBTFUL')""")
			.params(shortened(why), LetterStore.utc(now), letter.id(), letter.attempt())
			.update();
	}

	/** Note that it did not go; it is tried again after a pause, or given up. */
	void failed(Claimed letter, String trouble, Instant now) {
		if (letter.attempt() > PAUSES.size()) {
			settle(letter, LetterState.REFUSED, trouble, now);
			return;
		}
		this.database.sql("""
				update letter set state = 'WAITING', trouble = ?, due_at = ?
				where id = ? and attempts = ? and state in ('SENDING', 'DOUBTFUL')""")
			.params(shortened(trouble), LetterStore.utc(now.plus(PAUSES.get(letter.attempt() - 1))), letter.id(),
					letter.attempt())
			.update();
	}

	/** Note of what was claimed long ago that nobody knows whether it went. */
	int strand(Instant now) {
		return this.database.sql("""
				update letter set state = 'DOUBTFUL', settled_at = ? where state = 'SENDING' and claimed_at < ?""")
			.params(LetterStore.utc(now), LetterStore.utc(now.minus(STRANDED)))
			.update();
	}

	private static String shortened(String trouble) {
		return trouble.substring(0, Math.min(LONGEST_TROUBLE, trouble.length()));
	}

	private static Claimed claimed(ResultSet row, int at) throws SQLException {
		return new Claimed(row.getObject("id", UUID.class), row.getInt("attempts") + 1,
				new Addressees.Addressee(row.getString("recipient"), row.getString("address")),
				Locale.forLanguageTag(row.getString("language")),
				new Draft.Content(row.getString("subject"), row.getString("body")),
				row.getObject("link_at", Integer.class));
	}

	/**
	 * A letter that this service hands to the server.
	 *
	 * @param attempt which one this is, from 1
	 * @param linkAt where in the body the personal link stands, {@code null} for none
	 */
	record Claimed(UUID id, int attempt, Addressees.Addressee to, Locale language, Draft.Content content,
			@Nullable Integer linkAt) {

		/** The same with other words. */
		Claimed saying(Draft.Content words) {
			return new Claimed(this.id, this.attempt, this.to, this.language, words, this.linkAt);
		}

	}

}
