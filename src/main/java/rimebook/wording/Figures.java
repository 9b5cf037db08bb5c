package rimebook.wording;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoField;
import java.time.temporal.Temporal;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

/**
 * Writes figures, places and times as a language does, times in the zone of the rink.
 */
public class Figures {

	private static final String NONE = "–";

	private static final int ONE = 100;

	private final Locale locale;

	/**
	 * Write in a language.
	 * @param locale the language
	 */
	public Figures(Locale locale) {
		this.locale = locale;
	}

	/** The language. */
	public final Locale locale() {
		return this.locale;
	}

	/** A mark: 560 is 5.6, in French and Finnish 5,6. */
	public String mark(int hundredths) {
		return say(Sentence.of("figure.decimal", hundredths));
	}

	/** A factored total, or a dash. */
	public String total(@Nullable Integer hundredths) {
		return (hundredths != null) ? mark(hundredths) : NONE;
	}

	/** Hundredths without needless decimals, or a dash: 300 is 3, 150 is 1.5 or 1,5. */
	public String plain(@Nullable Integer hundredths) {
		return (hundredths != null) ? say(Sentence.of("figure.plain", hundredths)) : NONE;
	}

	/**
	 * Points with two decimals, or a dash: 6513 is 65.13, in French and Finnish 65,13.
	 */
	public String points(@Nullable Integer hundredths) {
		return (hundredths != null) ? say(Sentence.of("figure.points", hundredths)).replace('-', '−') : NONE;
	}

	/** A grade with its sign, or a dash: +2, 0, −1. */
	public String grade(@Nullable Integer grade) {
		return (grade == null) ? NONE : (grade > 0) ? "+" + grade : String.valueOf(grade).replace('-', '−');
	}

	/** A place in a column, or a dash. */
	public String place(@Nullable Integer place) {
		return (place != null) ? place.toString() : NONE;
	}

	/** A place in a sentence: 2nd, 2e, 2. */
	public String nth(int place) {
		return say(Sentence.of("figure.place", place));
	}

	/** The place for which a majority stands, which may lie between two: 1.5th. */
	public String majority(int hundredths) {
		boolean whole = hundredths % ONE == 0;
		return whole ? nth(hundredths / ONE) : say(Sentence.of("figure.between", plain(hundredths)));
	}

	/** A sentence in the language, or in English where it has no words in it. */
	public String say(Sentence sentence) {
		return sentence.in(this.locale);
	}

	/**
	 * The language a sentence comes out in where it is another one than that of the page,
	 * for {@code lang}; else {@code null}.
	 */
	public @Nullable String foreign(Sentence sentence) {
		return sentence.isSpokenIn(this.locale) ? null : Locale.ENGLISH.getLanguage();
	}

	/**
	 * What a rule set calls an element, a component, a deduction or itself: "move
	 * element".
	 */
	public String trade(String name) {
		return TradeName.in(name, this.locale);
	}

	/** The language that comes out in where it is another one, else {@code null}. */
	public @Nullable String foreignTrade(String name) {
		return TradeName.isSpokenIn(name, this.locale) ? null : Locale.ENGLISH.getLanguage();
	}

	/**
	 * By which rules a standing was made. It keeps the title of the rule set and the
	 * level in English.
	 */
	public String ruleSet(Sentence stored) {
		return say(stored.renaming(this::trade));
	}

	/** The time of the day at the rink, with its zone: "14:32 EET". */
	public String time(Instant instant, ZoneId zone) {
		return written("HH:mm z", instant.atZone(zone));
	}

	/**
	 * The time of the day at the rink alone, for lists whose head says the zone: "14:32".
	 */
	public String clock(Instant instant, ZoneId zone) {
		return written("HH:mm", instant.atZone(zone));
	}

	/** A day with its name: "Saturday 13 February". */
	public String weekday(LocalDate day) {
		return written("cccc d MMMM", day);
	}

	/** The same with its day, for what may be read later. */
	public String dayAndTime(Instant instant, ZoneId zone) {
		return written("d MMMM, HH:mm z", instant.atZone(zone));
	}

	/** The same with day and year, for what is read years later. */
	public String dayOfYearAndTime(Instant instant, ZoneId zone) {
		return written("d MMMM yyyy, HH:mm z", instant.atZone(zone));
	}

	/** Days in words: "14–15 February 2026". */
	public String days(LocalDate first, LocalDate last) {
		if (first.equals(last)) {
			return written("d MMMM yyyy", last);
		}
		boolean sameMonth = YearMonth.from(first).equals(YearMonth.from(last));
		return sameMonth ? written("d", first) + "–" + written("d MMMM yyyy", last)
				: written("d MMMM yyyy", first) + " – " + written("d MMMM yyyy", last);
	}

	/**
	 * How a language writes the number of a day and the time of day is said in its files:
	 * the first of a month may have another form than the other days.
	 */
	private String written(String english, Temporal when) {
		String day = say(Sentence.of("figure.day-number", when.get(ChronoField.DAY_OF_MONTH)));
		String pattern = english.replaceFirst("d", day).replace("HH:mm", say(Sentence.of("figure.clock")));
		return DateTimeFormatter.ofPattern(pattern, this.locale).format(when);
	}

}
