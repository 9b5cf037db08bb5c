package rimebook.performances;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.hibernate.resource.jdbc.spi.StatementInspector;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.hibernate.autoconfigure.HibernatePropertiesCustomizer;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;

import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

/** Closing the cards of a team asks the database for nothing of this twice. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:one-close;DB_CLOSE_DELAY=-1")
class OneCloseIntegrationTests {

	private static final List<String> ASKED = new CopyOnWriteArrayList<>();

	@Autowired
	private ApplicationContext context;

	@BeforeEach
	void aTeamIsClosed() {
		SmallCompetition day = SmallCompetition.running(this.context, 4, 5);
		day.open(1);
		day.skateNext(1);
		PerformanceView second = day.callNext(1);
		day.sendAll(second);
		int version = day.now(second).version();
		ASKED.clear();
		this.context.getBean(SegmentRun.class).close(second.id(), version, SmallCompetition.REFEREE);
	}

	@Test
	void asksForTheEventThePerformancesAndTheLocksOnce() {
		assertThat(ASKED).isNotEmpty();
		assertThat(asked("from segment s1_0 join event e1_0 on e1_0.id=s1_0.event_id where s1_0.id=\\?")).isOne();
		assertThat(asked("from performance .*where p1_0.segment_id=.* for update")).isOne();
		assertThat(asked("from performance .*where p1_0.segment_id=.*start_number")).isOne();
		assertThat(asked("from segment_result .* for update")).isOne();
	}

	private static long asked(String form) {
		return ASKED.stream().filter((sql) -> sql.matches("(?s)select .*" + form)).count();
	}

	@TestConfiguration(proxyBeanMethods = false)
	static class Listening {

		@Bean
		HibernatePropertiesCustomizer listening() {
			return (settings) -> settings.put("hibernate.session_factory.statement_inspector",
					(StatementInspector) (sql) -> {
						ASKED.add(sql);
						return sql;
					});
		}

	}

}
