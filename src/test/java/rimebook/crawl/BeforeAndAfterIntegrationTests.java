package rimebook.crawl;

import java.util.List;
import java.util.Set;

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

	/** Something begins to be there, or is said for the first time. */
	private static final Set<String> BEGINNINGS = Set.of("competition.created", "event.added", "entry.entered",
			"official.registered", "official.interest-declared", "person.added", "seat.taken", "seat.code-issued",
			"seat.paired", "seat.asked-for", "starting-order.drawn", "card.received", "card.keyed", "elements.called",
			"elements.planned", "deductions.noted", "performance.remark", "remark.seen", "ruling.asked", "ruling.given",
			"result.published", "protest.filed");

	/** What went in and out at the door, and passwords, of which nothing is told. */
	private static final Set<String> DOOR = Set.of("person.signed-in", "person.sign-in-failed", "person.refused",
			"person.password-wrong", "person.password-set", "person.password-chosen", "person.guessing-stopped",
			"seat.guessing-stopped");

	/** Nothing is there any more. */
	private static final Set<String> ENDS = Set.of("event.removed", "seat.vacated", "official.interest-removed");

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
		assertThat(acts("before_text = ''")).filteredOn((act) -> !DOOR.contains(act)).isSubsetOf(BEGINNINGS);
		assertThat(acts("after_text = ''")).isSubsetOf(ENDS);
		assertThat(acts("""
				action = 'result.published' and before_text = '' and after_text not like '%, version 1, %'"""))
			.isEmpty();
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
