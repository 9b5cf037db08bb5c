package rimebook.crawl;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.audit.RecordVerification;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Whatever is done on a day, in every state that it can come to, stands on the record
 * with what was there before and what is there now. Shares the crawl's application.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:routes;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class BeforeAndAfterIntegrationTests {

	/** Something is another than it was: both are told. */
	private static final Set<String> CHANGES = Set.of("competition.changed", "competition.moved",
			"competition.taken-back", "event.changed", "event.cancelled", "event.brought-back", "segment.cancelled",
			"segment.brought-back", "segment.opened", "club.changed", "club.merged", "club.separated",
			"team.given-over", "team.given-back", "team.changed", "entry.withdrawn", "entry.reinstated",
			"official.changed", "person.changed", "person.shut-out", "person.let-in", "seat.bond-set-aside",
			"seat.handed-over", "seat.kept", "seat.taken-over", "seat.taken-back", "seat.guessing-freed",
			"starting-order.redrawn", "starting-order.added-to", "entry.moved", "performance.called",
			"performance.called-out-of-order", "performance.call-taken-back", "performance.waits",
			"performance.set-aside", "performance.counts-again", "performance.ended", "performance.status-corrected",
			"performance.status-followed", "clock.start", "clock.stop", "clock.interrupt", "clock.resume",
			"clock.reskate", "clock.take-back", "card.settled", "card.corrected", "cards.closed",
			"cards.closed-without", "cards.reopened", "elements.authorised", "elements.opened-again",
			"elements.corrected", "deductions.seen", "deductions.corrected", "ruling.superseded",
			"ruling.question-released", "ruling.question-withheld", "entry.announcer-facts",
			"competition.commentator-link-renewed", "competition.commentator-shut-out", "entry.manager-link-renewed",
			"entry.manager-shut-out", "result.posted", "result.signed", "result.reopened", "protest.confirmed",
			"protest.not-confirmed", "protest.decided", "correction.proposed", "correction.approved",
			"correction.rejected", "timetable.block-changed", "timetable.block-moved", "timetable.sheet-changed",
			"timetable.rules-changed", "timetable.taken-back", "skater.changed", "skater.agreed", "skater.disagreed",
			"segment.renumbered", "performance.renumbered", "skater.deleted", "skater.merged", "skater.separated",
			"skater.kept-apart", "skater.kept-apart-no-more", "roster-place.changed", "roster-place.stepped-in",
			"roster-place.merged", "roster-place.given-back", "waiver.taken-back", "retention.deleted-in-part",
			"retention.deleted", "music.noted-on-site", "music.noted-not-on-site", "music.deadline-set",
			"music.deleted", "letters.text-changed", "letters.cancelled", "letters.deleted", "fee.reversed",
			"arrival.noted-here", "arrival.noted-not-here", "lineup.changed", "service.started-from-copy",
			"service.lost-act-settled");

	/**
	 * Something begins to be there, or is said for the first time; where it is said again
	 * or comes back, what was before is told.
	 */
	private static final Set<String> BEGINNINGS = Set.of("competition.created", "competition.commentator-let-in",
			"entry.manager-let-in", "event.added", "club.added", "club.contact-set", "team.name-recorded", "team.added",
			"entry.entered", "official.registered", "official.interest-declared", "person.added", "seat.taken",
			"seat.code-issued", "seat.paired", "seat.asked-for", "starting-order.drawn", "card.received",
			"card.returned", "card.keyed", "elements.called", "elements.planned", "deductions.noted",
			"performance.remark", "remark.seen", "ruling.asked", "ruling.given", "result.published", "protest.filed",
			"timetable.filled", "timetable.block-added", "timetable.sheet-added", "timetable.published",
			"timetable.letters-printed", "skater.added", "roster-place.taken", "roster.contact-added",
			"eligibility.set", "required-list.set", "waiver.given", "retention.set", "music.handed-in", "music.played",
			"lineup.kept", "letters.mailed", "letters.mailed-again", "letters.printed", "letters.languages-set",
			"fee-rules.set", "fee.owed", "fee.paid", "fee.waived", "fee.refunded");

	/** What went in and out at the door, and passwords, of which nothing is told. */
	private static final Set<String> DOOR = Set.of("person.signed-in", "person.sign-in-failed", "person.refused",
			"person.password-wrong", "person.password-set", "person.password-chosen", "person.guessing-stopped",
			"seat.guessing-stopped");

	/** Somebody took a copy of what is there, which changes nothing. */
	private static final Set<String> COPIES = Set.of("competition.archived", "competition.archive-taken",
			"competition.rehearsal-begun", "competition.rehearsal-ended");

	/** Nothing is there any more. */
	private static final Set<String> ENDS = Set.of("event.removed", "club.contact-removed", "team.recording-removed",
			"seat.vacated", "official.interest-removed", "timetable.block-removed", "timetable.sheet-removed",
			"roster.contact-removed", "performance.left-out");

	/** An act on one of these, as the code of its module writes it. */
	private static final Pattern ACT = Pattern.compile("\"((?:competition|event|segment|club|team|entry|elements|"
			+ "deductions|official|seat|starting-order|cards?|clock|performance|remark|ruling|protest|correction|result|"
			+ "person|service|timetable|music|letters|skater|roster|roster-place|waiver|eligibility|required-list|"
			+ "retention|fee|fee-rules|arrival|lineup)\\.[a-z-]+)\"");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@Autowired
	private RecordVerification verification;

	@BeforeEach
	void playTheDayInEveryState() {
		if (acts("action = 'competition.taken-back'").isEmpty()) {
			new CrawledPlaces(this.context).build();
		}
	}

	@Test
	void everyChangeIsToldWithWhatWasThereBeforeAndWhatIsThereNow() {
		assertThat(acts("before_text <> '' and after_text <> ''")).as("acts that change something")
			.hasSizeGreaterThan(20);
		assertThat(acts("before_text = ''")).filteredOn((act) -> !DOOR.contains(act) && !COPIES.contains(act))
			.isSubsetOf(BEGINNINGS);
		assertThat(acts("after_text = ''")).isSubsetOf(ENDS);
		assertThat(acts("""
				action = 'result.published' and before_text = '' and after_text not like '%, version 1, %'"""))
			.isEmpty();
	}

	/** Whoever adds a kind of line says here whether there is something before it. */
	@Test
	void ofEveryKindOfLineItIsSaidWhatIsBeforeIt() throws IOException {
		Set<String> known = Stream.of(CHANGES, BEGINNINGS, DOOR, COPIES, ENDS)
			.flatMap(Set::stream)
			.collect(Collectors.toSet());
		assertThat(acts("number > 0")).isSubsetOf(known);
		assertThat(written()).hasSizeGreaterThan(80).isSubsetOf(known);
	}

	/** Texts have names of the same shape, and are no acts. */
	private static Set<String> written() throws IOException {
		Set<String> texts = new HashSet<>();
		for (Path file : files(Path.of("src", "main", "resources"), "(messages|sentences)/\\w+\\.properties")) {
			Files.readAllLines(file).forEach((line) -> texts.add(line.replaceFirst("\\s*=.*", "")));
		}
		Set<String> written = new TreeSet<>();
		for (Path file : files(Path.of("src", "main", "java"), ".*\\.java")) {
			ACT.matcher(Files.readString(file).replaceAll("(?m)^\\s*\\*.*$", ""))
				.results()
				.map((act) -> act.group(1))
				.filter((act) -> !texts.contains(act))
				.forEach(written::add);
		}
		return written;
	}

	private static List<Path> files(Path folder, String name) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(Files::isRegularFile)
				.filter((file) -> folder.relativize(file).toString().replace('\\', '/').matches(name))
				.toList();
		}
	}

	/** A false alarm in the middle of a day would be worse than none. */
	@Test
	void whatIsStoredIsWhatTheLinesAttestInEveryStateOfADay() {
		assertThat(this.verification.compareStored().shown()).isEmpty();
	}

	private List<String> acts(String of) {
		return this.database.sql("select distinct action from record_line where " + of + " order by action")
			.query(String.class)
			.list();
	}

}
