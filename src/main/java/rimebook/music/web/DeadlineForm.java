package rimebook.music.web;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

import org.jspecify.annotations.Nullable;

import rimebook.music.MusicDeadlines;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Until when music is taken, as typed: a day and a time at the rink, or nothing. */
class DeadlineForm {

	private int seen;

	private String day = "";

	private String time = "";

	static DeadlineForm of(MusicDeadlines.Deadline deadline, ZoneId zone) {
		DeadlineForm form = new DeadlineForm();
		form.seen = deadline.number();
		Instant closes = deadline.closesAt();
		if (closes != null) {
			ZonedDateTime there = closes.atZone(zone);
			form.day = there.toLocalDate().toString();
			form.time = there.toLocalTime().toString();
		}
		return form;
	}

	/** {@code null} for no deadline. */
	@Nullable Instant closesAt(ZoneId zone) {
		if (this.day.isBlank() && this.time.isBlank()) {
			return null;
		}
		try {
			return ZonedDateTime.of(LocalDate.parse(this.day.strip()), LocalTime.parse(this.time.strip()), zone)
				.toInstant();
		}
		catch (DateTimeException ex) {
			throw new RuleViolationException("music-deadline-malformed", "day",
					Sentence.of("music.deadline-malformed"));
		}
	}

	public int getSeen() {
		return this.seen;
	}

	public void setSeen(int seen) {
		this.seen = seen;
	}

	public String getDay() {
		return this.day;
	}

	public void setDay(String day) {
		this.day = day;
	}

	public String getTime() {
		return this.time;
	}

	public void setTime(String time) {
		this.time = time;
	}

}
