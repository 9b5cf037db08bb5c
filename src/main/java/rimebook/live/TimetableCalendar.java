package rimebook.live;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Date;
import java.util.Locale;
import java.util.UUID;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.Status;
import biweekly.util.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;

import rimebook.competition.CompetitionView;
import rimebook.timetable.TimetableVersion;
import rimebook.timetable.plan.Programmed;

/**
 * Writes a published timetable as iCalendar (RFC 5545), for programs that subscribe to
 * it. What happens keeps its identity from version to version and counts up with them, so
 * that a later version moves it in every calendar. Times are written in UTC, which no
 * calendar can take for another zone; each shows them in its owner's. The same version is
 * always the same bytes.
 */
final class TimetableCalendar {

	static final String TYPE = "text/calendar;charset=UTF-8";

	/** How often a calendar should ask again. */
	private static final int HOURS = 1;

	private final CompetitionView competition;

	private final TimetableVersion version;

	private final MessageSource messages;

	private final Locale locale;

	private final ICalendar calendar = new ICalendar();

	TimetableCalendar(CompetitionView competition, TimetableVersion version, MessageSource messages, Locale locale) {
		this.competition = competition;
		this.version = version;
		this.messages = messages;
		this.locale = locale;
		this.calendar.setProductId("-//Rimebook//Timetable//EN");
		// RFC 7986 section 5.7 wants the type said.
		this.calendar.setRefreshInterval(Duration.builder().hours(HOURS).build()).setParameter("VALUE", "DURATION");
		this.calendar.setExperimentalProperty("X-PUBLISHED-TTL", "PT1H");
	}

	/** All that happens. */
	String all() {
		this.version.timetable().surfaces().forEach((ice) -> ice.items().forEach((item) -> add(ice, item, null)));
		return named(this.competition.name());
	}

	/** What happens of an event. */
	String ofEvent(UUID event, String name) {
		this.version.timetable()
			.surfaces()
			.forEach((ice) -> ice.items()
				.stream()
				.filter((item) -> item.isOf(event))
				.forEach((item) -> add(ice, item, null)));
		return named(name + ", " + this.competition.name());
	}

	/** A team's own times. */
	String ofTeam(UUID entry, String name) {
		this.version.timetable()
			.surfaces()
			.forEach((ice) -> ice.items()
				.forEach((item) -> item.lines()
					.stream()
					.filter((line) -> line.isOf(entry))
					.forEach((line) -> add(ice, item, line))));
		return named(name + ", " + this.competition.name());
	}

	private String named(String name) {
		this.calendar.setName(name);
		this.calendar.setExperimentalProperty("X-WR-CALNAME", name);
		StringWriter text = new StringWriter();
		try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
			writer.write(this.calendar);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("Nothing is written but a text", ex);
		}
		return text.toString();
	}

	private void add(Programmed.Ice ice, Programmed.Item item, Programmed.@Nullable Line line) {
		VEvent event = new VEvent();
		String whose = (line != null && line.team() != null) ? "-" + line.team().entry() : "";
		event.setUid(item.id() + whose + "@" + this.competition.id() + ".rimebook");
		event.setSequence(this.version.number());
		event.setDateTimeStamp(at(this.version.act().at()));
		event.setLastModified(at(this.version.act().at()));
		event.setDateStart(at((line != null) ? line.begins() : item.begins()), true);
		event.setDateEnd(at((line != null) ? line.ends() : item.ends()), true);
		event.setStatus(Status.confirmed());
		event.setSummary((line != null && line.team() != null) ? of(line.team().name(), name(item)) : name(item));
		event.setLocation(this.competition.facts().place() + ", " + ice.surface());
		event.setDescription(this.messages.getMessage("live.timetable.version",
				new Object[] { this.version.number(), this.competition.name() }, this.locale));
		this.calendar.addEvent(event);
	}

	private String name(Programmed.Item item) {
		if (!item.title().isEmpty()) {
			return item.title();
		}
		String kind = this.messages.getMessage("live.timetable.kind." + item.kind(), null, this.locale);
		if (item.of() == null) {
			return kind;
		}
		return switch (item.kind()) {
			case SEGMENT -> item.of().where();
			case CEREMONY -> of(kind, item.of().event().name());
			default -> of(kind, item.of().where());
		};
	}

	private String of(String what, String whose) {
		return this.messages.getMessage("live.of", new Object[] { what, whose }, this.locale);
	}

	private static Date at(Instant instant) {
		return Date.from(instant);
	}

}
