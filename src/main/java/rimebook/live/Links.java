package rimebook.live;

import java.time.LocalDate;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/**
 * The public addresses. Slugs are plain ASCII, so nothing needs to be escaped.
 *
 * @param base the path of the application, empty at the root
 * @param pageLanguage the language that links carry on
 */
record Links(String base, PageLanguage pageLanguage) {

	public String home() {
		return at("/");
	}

	public String competition(CompetitionView competition) {
		return at(path(competition));
	}

	public String board(CompetitionView competition) {
		return at(path(competition) + "/board");
	}

	/** The standing on the big screen. */
	public String boardStanding(CompetitionView competition) {
		return at(path(competition) + "/board/standing");
	}

	/** The timetable on the big screen. */
	public String boardTimetable(CompetitionView competition) {
		return at(path(competition) + "/board/timetable");
	}

	/** The first places of an event on the big screen, before anybody is called up. */
	public String ceremony(CompetitionView competition, EventView event) {
		return at(path(competition, event) + "/ceremony");
	}

	/** The same once so many places were called up. */
	public String ceremony(CompetitionView competition, EventView event, int step) {
		return at(path(competition, event) + "/ceremony/" + step);
	}

	/** The published timetable on the day that is next. */
	public String timetable(CompetitionView competition) {
		return at(path(competition) + "/timetable");
	}

	/** The published timetable of a day. */
	public String timetable(CompetitionView competition, LocalDate day) {
		return at(path(competition) + "/timetable/" + day);
	}

	/** The same on paper, all surfaces. */
	public String dayOnPaper(CompetitionView competition, LocalDate day) {
		return paper(competition, day + ".pdf");
	}

	/**
	 * A sheet for the door of a surface on a day.
	 * @param surface counted from 1 among those of that day
	 */
	public String doorSheet(CompetitionView competition, LocalDate day, int surface) {
		return paper(competition, day + "/door-" + surface + ".pdf");
	}

	/** Paper always says its language, since nobody can change it there. */
	private String paper(CompetitionView competition, String rest) {
		return this.base + path(competition) + "/timetable/" + rest + "?lang="
				+ this.pageLanguage.locale().getLanguage();
	}

	/** All times of a team. */
	public String times(CompetitionView competition, Object entry) {
		return at(path(competition) + "/timetable/team/" + entry);
	}

	/** The whole timetable as a calendar. */
	public String calendar(CompetitionView competition) {
		return at(path(competition) + "/timetable.ics");
	}

	/** That of an event. */
	public String calendar(CompetitionView competition, EventView event) {
		return at(path(competition) + "/timetable/event/" + event.slug() + ".ics");
	}

	/** A team's own. */
	public String teamCalendar(CompetitionView competition, Object entry) {
		return at(path(competition) + "/timetable/team/" + entry + ".ics");
	}

	public String event(CompetitionView competition, EventView event) {
		return at(path(competition, event));
	}

	public String segment(CompetitionView competition, EventView event, SegmentView segment) {
		return at(path(competition, event, segment));
	}

	public String order(CompetitionView competition, EventView event, SegmentView segment) {
		return at(path(competition, event, segment) + "/order");
	}

	public String versions(CompetitionView competition, EventView event, SegmentView segment) {
		return at(path(competition, event, segment) + "/versions");
	}

	public String version(CompetitionView competition, EventView event, SegmentView segment, int number) {
		return at(path(competition, event, segment) + "/versions/" + number);
	}

	/** Where teams are found by typing. */
	public String find(CompetitionView competition) {
		return at(path(competition) + "/find");
	}

	/** Where the form of that search is sent. */
	public String ask(CompetitionView competition) {
		return this.base + path(competition) + "/find/ask";
	}

	/** What the words of the trade mean. */
	public String words(CompetitionView competition) {
		return at(path(competition) + "/words");
	}

	/** A team's own page. */
	public String team(CompetitionView competition, String entry) {
		return at(path(competition) + "/team/" + entry);
	}

	/** The language to be sent along with a form, empty for none. */
	public String language() {
		return this.pageLanguage.chosen() ? this.pageLanguage.locale().getLanguage() : "";
	}

	/** A segment in pictures. */
	public String pictures(CompetitionView competition, EventView event, SegmentView segment) {
		return at(path(competition, event, segment) + "/pictures");
	}

	/** Where two teams of a segment are put beside each other. */
	public WhyLinks why(CompetitionView competition, EventView event, SegmentView segment) {
		return new WhyLinks(this.base + path(competition, event, segment) + "/why", this.pageLanguage);
	}

	/** The same in an event. */
	public WhyLinks why(CompetitionView competition, EventView event) {
		return new WhyLinks(this.base + path(competition, event) + "/why", this.pageLanguage);
	}

	/** What this browser kept of the record. */
	public String recordSeen() {
		return at("/record-seen");
	}

	/** Where the signals of the competition are heard. */
	public String signals(CompetitionView competition) {
		return this.base + path(competition) + "/signals";
	}

	/** The same data for programs. */
	public String data(CompetitionView competition, EventView event, SegmentView segment) {
		return this.base + "/api/public/competitions/" + competition.slug() + "/events/" + event.slug() + "/segments/"
				+ segment.slug();
	}

	private static String path(CompetitionView competition) {
		return "/follow/" + competition.slug();
	}

	private static String path(CompetitionView competition, EventView event) {
		return path(competition) + "/" + event.slug();
	}

	private static String path(CompetitionView competition, EventView event, SegmentView segment) {
		return path(competition, event) + "/" + segment.slug();
	}

	private String at(String path) {
		return this.base + path + this.pageLanguage.query();
	}

}
