package rimebook.wording;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A day and a time as part of a sentence: "13 Feb 14:30 EET". */
public final class Moment {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm zzz", Locale.ENGLISH);

	private Moment() {
	}

	/** The moment as it is at that place; the zone goes by its usual short name. */
	public static Sentence of(ZonedDateTime moment) {
		return Sentence.of("moment.of-day", moment.getDayOfMonth(),
				Sentence.of("moment.month." + moment.getMonthValue()), TIME.format(moment));
	}

}
