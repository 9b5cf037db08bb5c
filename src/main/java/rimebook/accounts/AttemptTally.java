package rimebook.accounts;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Counts by day (UTC) what fails or is refused, so that somebody who guesses all day
 * fills neither the record nor a table: the 1st, 2nd, 5th, 10th, 20th and so on of a day
 * is worth a line, and no more subjects are told apart a day than {@link #MOST_SUBJECTS}
 * of a kind.
 */
@Component
class AttemptTally {

	static final int MOST_SUBJECTS = 200;

	/** All subjects beyond those that are told apart. */
	static final String OTHERS = "*";

	private final JdbcClient database;

	private final Clock clock;

	AttemptTally(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/** Count one more, and tell which of the day it is. */
	@Transactional(propagation = Propagation.MANDATORY)
	Count count(Kind kind, String subject) {
		this.database.sql("select times from attempt_tally where kind = 'lock' for update")
			.query(Integer.class)
			.single();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		String counted = isCounted(kind, subject, today) || hasRoom(kind, today) ? subject : OTHERS;
		if (add(kind, counted, today) == 0) {
			begin(kind, counted, today);
		}
		return new Count(this.database.sql("select times from attempt_tally where kind = :kind and subject = :subject")
			.param("kind", kind.name())
			.param("subject", counted)
			.query(Integer.class)
			.single(), counted.equals(OTHERS));
	}

	private boolean isCounted(Kind kind, String subject, LocalDate today) {
		return number(
				"select count(*) from attempt_tally where kind = :kind and counted_on = :day and subject = :subject",
				kind, subject, today) > 0;
	}

	private boolean hasRoom(Kind kind, LocalDate today) {
		return number(
				"select count(*) from attempt_tally where kind = :kind and counted_on = :day and subject <> :subject",
				kind, OTHERS, today) < MOST_SUBJECTS;
	}

	private int number(String sql, Kind kind, String subject, LocalDate today) {
		return this.database.sql(sql)
			.param("kind", kind.name())
			.param("day", today)
			.param("subject", subject)
			.query(Integer.class)
			.single();
	}

	private int add(Kind kind, String subject, LocalDate today) {
		return this.database.sql("""
				update attempt_tally set times = times + 1
				where kind = :kind and subject = :subject and counted_on = :day""")
			.param("kind", kind.name())
			.param("subject", subject)
			.param("day", today)
			.update();
	}

	/** The first of a day; what was counted on earlier days is of no use any more. */
	private void begin(Kind kind, String subject, LocalDate today) {
		this.database.sql("delete from attempt_tally where kind = :kind and counted_on <> :day")
			.param("kind", kind.name())
			.param("day", today)
			.update();
		this.database
			.sql("insert into attempt_tally (kind, subject, counted_on, times) values (:kind, :subject, :day, 1)")
			.param("kind", kind.name())
			.param("subject", subject)
			.param("day", today)
			.update();
	}

	/**
	 * Which of the day it is.
	 *
	 * @param times how many there were, this one included
	 * @param ofOthers whether several subjects are counted together here
	 */
	record Count(int times, boolean ofOthers) {

		/** 1, 2, 5, 10, 20, 50, 100 and so on. */
		boolean isWorthALine() {
			int rest = this.times;
			while (rest % 10 == 0) {
				rest /= 10;
			}
			return rest == 1 || rest == 2 || rest == 5;
		}

		String words() {
			return ((this.times == 1) ? "the first time today" : this.times + " times today")
					+ (this.ofOthers ? ", from many places together" : "");
		}

	}

	/** What is counted day by day ({@link AttemptTally}). */
	enum Kind {

		/** A password that does not fit, or of somebody who is shut out. */
		FAILED,

		/** A password that was not even tried, since too many had failed. */
		STOPPED,

		/** A password that a page asked for once more, and that was not the person's. */
		ASKED_AGAIN,

		/** A page or an act that a person's roles do not open. */
		REFUSED,

		/** A network that was stopped from trying seat codes. */
		CODES

	}

}
