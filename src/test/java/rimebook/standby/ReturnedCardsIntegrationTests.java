package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

import rimebook.audit.RecordAnchors;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

/** From a copy on a stick, which also knows what was lost. */
class ReturnedCardsIntegrationTests extends ReturnedCards {

	@TempDir
	static Path place;

	private CopyFolder stick;

	private CopyMaker maker;

	@Override
	List<String> firstLaptop() throws IOException {
		this.stick = new CopyFolder(Files.createDirectory(place.resolve("stick")));
		return List.of(database("first"));
	}

	@Override
	void copy(ConfigurableApplicationContext service) throws IOException {
		this.maker = new CopyMaker(this.stick,
				new CopyMaker.Source(service.getBean(JdbcTemplate.class), service.getBean(RecordTail.class),
						service.getBean(RecordAnchors.class), service.getBean(ServiceLives.class),
						DatabaseFile.of(service.getEnvironment()).orElseThrow(), List.of()),
				Duration.ofSeconds(30), service.getBean(Clock.class));
		this.maker.look();
	}

	@Override
	void beforeItDies(ConfigurableApplicationContext service) throws IOException {
		this.maker.look();
	}

	@Override
	List<String> nextLaptop() {
		return List.of(database("second"), "from-copy=" + this.stick.path());
	}

	@Test
	void whatIsMissingIsSaidInFigures() {
		assertThat(alarmAtFirst()).contains("no card came back", "10 are missing", "other acts are to be done again");
	}

	@Test
	void whoeverSettlesAnActOtherwiseIsNamed() {
		assertThat(openOf(third())).contains("performance.called");
		LostActs lost = service().getBean(LostActs.class);
		LostAct call = lost.named()
			.stream()
			.filter((act) -> act.line().action().equals("performance.called")
					&& act.line().subjectId().equals(third().id().toString()))
			.findFirst()
			.orElseThrow();
		assertThat(call.about()).contains("No. 3 ");
		lost.settle(call.life(), call.line().number(), SmallCompetition.REFEREE);
		assertThat(openOf(third())).doesNotContain("performance.called");
		assertThat(query("select count(*) from record_line where action = 'service.lost-act-settled'")).isOne();
	}

	private static String database(String laptop) {
		return "spring.datasource.url=jdbc:h2:file:" + place.resolve(laptop).resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE";
	}

}
