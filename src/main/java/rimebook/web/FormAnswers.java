package rimebook.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

import rimebook.pages.Notice;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Remembers for ten minutes where each form led, so that the same form sent twice is done
 * once and answered twice alike, on whichever node. Of two that come at once the second
 * waits for the first. What was refused is not remembered: it may be sent again.
 */
@Component
class FormAnswers {

	private static final Duration KEPT = Duration.ofMinutes(10);

	/** After that long the node that took the form is taken for dead. */
	private static final Duration ON_ITS_WAY = Duration.ofMinutes(1);

	private static final Duration PATIENCE = Duration.ofSeconds(15);

	private static final int LOOK_EVERY_MS = 40;

	private static final int LONGEST = 2000;

	private final JdbcClient database;

	private final Clock clock;

	private final JsonMapper json = JsonMapper.builder().build();

	FormAnswers(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * Take the form on, unless it was taken on before.
	 * @return where it led, or nothing if it is to be done now
	 * @throws ConflictException {@code form-on-its-way} if it is still being done
	 */
	Optional<FormAnswer> takeOn(String digest) {
		Instant start = this.clock.instant();
		while (!claim(digest)) {
			Optional<FormAnswer> answer = answer(digest);
			if (answer.isPresent()) {
				return answer;
			}
			if (this.clock.instant().isAfter(start.plus(PATIENCE))) {
				throw new ConflictException("form-on-its-way", Sentence.of("web.form-on-its-way"));
			}
			pause();
		}
		return Optional.empty();
	}

	private boolean claim(String digest) {
		forgetOld();
		try {
			return this.database.sql("insert into form_answer (digest, claimed_at) values (?, ?)")
				.params(digest, at(this.clock.instant()))
				.update() == 1;
		}
		catch (DuplicateKeyException ex) {
			return false;
		}
	}

	private void forgetOld() {
		Instant now = this.clock.instant();
		this.database.sql("delete from form_answer where claimed_at < ? or (location is null and claimed_at < ?)")
			.params(at(now.minus(KEPT)), at(now.minus(ON_ITS_WAY)))
			.update();
	}

	private Optional<FormAnswer> answer(String digest) {
		return this.database.sql("select location, notice from form_answer where digest = ? and location is not null")
			.param(digest)
			.query((row, at) -> new FormAnswer(row.getString(1), notice(row.getString(2))))
			.optional();
	}

	private @Nullable Notice notice(@Nullable String kept) {
		return (kept != null) ? this.json.readValue(kept, Notice.class) : null;
	}

	/** Remember where the form led. */
	void done(String digest, FormAnswer answer) {
		String notice = (answer.notice() != null) ? this.json.writeValueAsString(answer.notice()) : null;
		this.database.sql("update form_answer set location = ?, notice = ? where digest = ?")
			.param(answer.location())
			.param(fits(notice) ? notice : null)
			.param(digest)
			.update();
	}

	private static boolean fits(@Nullable String notice) {
		return notice != null && notice.length() <= LONGEST;
	}

	/** The form was refused or broke off: it may be sent again. */
	void letGo(String digest) {
		this.database.sql("delete from form_answer where digest = ? and location is null").param(digest).update();
	}

	private static void pause() {
		try {
			Thread.sleep(LOOK_EVERY_MS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException("Stopped while waiting for the same form", ex);
		}
	}

	private static OffsetDateTime at(Instant instant) {
		return OffsetDateTime.ofInstant(instant, ZoneOffset.UTC);
	}

	/**
	 * Where a form led.
	 *
	 * @param location the address
	 * @param notice what the page there said once, null for nothing
	 */
	record FormAnswer(String location, @Nullable Notice notice) {

		/** Tell whether it can be kept: no page of ours has a longer address. */
		boolean isShort() {
			return this.location.length() <= LONGEST;
		}

	}

}
