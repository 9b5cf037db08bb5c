package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;

import javax.sql.DataSource;

import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.ui.ConcurrentModel;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.HouseAddresses;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * How rehearsals begin and end, with a process that only says that it is ready: the real
 * one takes a while to come up.
 */
@WholeApplication
class RehearsalsIntegrationTests {

	private static final Duration HALF_A_DAY = Duration.ofHours(12);

	private static final Actor SOMEBODY_ELSE = new Actor("Bo Tally", "secretary", "test");

	@Autowired
	private ApplicationContext context;

	private Rehearsals rehearsals;

	private CompetitionView competition;

	private volatile Path folder;

	@AfterEach
	void stop() {
		if (this.rehearsals != null) {
			this.rehearsals.stop();
			this.rehearsals = null;
		}
	}

	@Test
	void itIsRefusedWhereMemoryIsLacking() {
		hold(new RehearsalSettings(0, HALF_A_DAY, Integer.MAX_VALUE / 2), "exit 1");
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.rehearsals.begin(this.competition, SmallCompetition.REFEREE))
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("rehearsal-memory"))
			.withMessageContaining("MB");
		assertThat(this.rehearsals.current()).isNull();
		assertThat(lines()).isEmpty();
		ConcurrentModel page = new ConcurrentModel();
		controller().show(SmallCompetition.REFEREE, page);
		assertThat((long) page.getAttribute("lacks")).isPositive();
	}

	/** What a page that is open is given; {@code null} and no content if that is old. */
	private String stateAfter(String shown) {
		MockHttpServletResponse response = new MockHttpServletResponse();
		String view = controller().state(shown, SOMEBODY_ELSE, new ConcurrentModel(), response);
		assertThat(response.getStatus()).isEqualTo((view != null) ? 200 : 204);
		return view;
	}

	private RehearsalController controller() {
		return new RehearsalController(this.rehearsals, this.context.getBean(Readiness.class),
				this.context.getBean(Competitions.class), this.context.getBean(HouseAddresses.class));
	}

	@Test
	void itEndsByItselfAfterTheLongestTime() {
		hold(settings(Duration.ofMillis(1)), "echo The rehearsal is ready at port 1; cat");
		this.rehearsals.begin(this.competition, SmallCompetition.REFEREE);
		await(Rehearsal.Stage.DELETED);
		assertThat(lines()).containsExactly("competition.rehearsal-begun Runa Hale on a copy, beside the real service",
				"competition.rehearsal-ended Rimebook stopped and deleted");
		assertThat(this.folder).doesNotExist();
	}

	@Test
	void twoRefereesBeginOneAndEndItOnce() {
		hold(settings(HALF_A_DAY), "echo The rehearsal is ready at port 1; cat");
		this.rehearsals.begin(this.competition, SmallCompetition.REFEREE);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.rehearsals.begin(this.competition, SOMEBODY_ELSE))
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("rehearsal-runs"));
		await(Rehearsal.Stage.RUNNING);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.rehearsals.begin(this.competition, SOMEBODY_ELSE));
		String shown = this.rehearsals.current().print();
		assertThat(stateAfter(shown)).as("nothing new").isNull();
		this.rehearsals.end(SOMEBODY_ELSE);
		this.rehearsals.end(SmallCompetition.REFEREE);
		await(Rehearsal.Stage.DELETED);
		assertThat(stateAfter(shown)).isEqualTo("rehearsal/begin :: state");
		assertThat(lines()).containsExactly("competition.rehearsal-begun Runa Hale on a copy, beside the real service",
				"competition.rehearsal-ended Bo Tally stopped and deleted");
		assertThat(this.folder).doesNotExist();
		this.rehearsals.begin(this.competition, SOMEBODY_ELSE);
		await(Rehearsal.Stage.RUNNING);
	}

	@Test
	void oneThatDoesNotComeUpLeavesNothing() {
		hold(settings(HALF_A_DAY), "exit 3");
		this.rehearsals.begin(this.competition, SmallCompetition.REFEREE);
		await(Rehearsal.Stage.FAILED);
		assertThat(lines()).containsExactly("competition.rehearsal-begun Runa Hale on a copy, beside the real service",
				"competition.rehearsal-ended Rimebook came to an end by itself; deleted");
		assertThat(this.folder).doesNotExist();
	}

	/** The service may be told to stop at any moment. */
	@Test
	void aServiceThatStopsTakesItAlong() {
		hold(settings(HALF_A_DAY), "echo The rehearsal is ready at port 1; cat");
		this.rehearsals.begin(this.competition, SmallCompetition.REFEREE);
		await(Rehearsal.Stage.RUNNING);
		stop();
		assertThat(lines()).hasSize(2);
		assertThat(this.folder).doesNotExist();
	}

	private static RehearsalSettings settings(Duration longest) {
		return new RehearsalSettings(0, longest, 0);
	}

	/** A service that holds one, whose process is a script. */
	private void hold(RehearsalSettings settings, String script) {
		this.competition = SmallCompetition.running(this.context, 2, 3).competition();
		this.rehearsals = new Rehearsals(this.context.getBean(DataSource.class), this.context.getBean(Acts.class),
				this.context.getBean(TransactionTemplate.class), settings, new Scripted(script), new SecureRandom(),
				this.context.getBean(Competitions.class));
	}

	private void await(Rehearsal.Stage stage) {
		Awaitility.await()
			.atMost(30, TimeUnit.SECONDS)
			.pollInterval(20, TimeUnit.MILLISECONDS)
			.until(() -> this.rehearsals.current().stage() == stage);
	}

	private List<String> lines() {
		return this.context.getBean(JdbcClient.class)
			.sql("select action, actor, after_text from record_line where subject_id = ? and action like 'competition.rehearsal%' "
					+ "order by number")
			.param(this.competition.id().value())
			.query((row, at) -> row.getString(1) + " " + row.getString(2) + " " + row.getString(3))
			.list();
	}

	private final class Scripted extends RehearsalStart {

		private final String script;

		Scripted(String script) {
			super(settings(HALF_A_DAY), RehearsalsIntegrationTests.this.context.getEnvironment(),
					RehearsalsIntegrationTests.this.context.getBean(HouseAddresses.class));
			this.script = script;
		}

		@Override
		RehearsalProcess start(RehearsalFolder folder, UUID competition, String password) throws IOException {
			RehearsalsIntegrationTests.this.folder = folder.path();
			assertThat(folder.archive()).isNotEmptyFile();
			return RehearsalProcess.of(folder, competition, new ProcessBuilder("sh", "-c", this.script));
		}

	}

}
