package rimebook.demo;

import java.time.Duration;

import org.junit.jupiter.api.Test;
import org.springframework.boot.web.server.context.WebServerApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;

class DemoRunnerTests {

	private final DemoCrew crew = mock();

	private final DemoCompetition competition = mock();

	private final DemoRunner runner = new DemoRunner(this.crew, this.competition, mock(), mock(), mock(),
			new DemoSettings(Duration.ofSeconds(20), true));

	@Test
	void competitionIsBuiltBeforeTheServerListens() {
		assertThat(this.runner.getPhase()).isLessThan(WebServerApplicationContext.START_STOP_LIFECYCLE_PHASE);
		assertThat(this.runner.isAutoStartup()).isTrue();
		this.runner.start();
		var order = inOrder(this.crew, this.competition);
		order.verify(this.crew).arrive();
		order.verify(this.competition).build();
		assertThat(this.runner.isRunning()).isTrue();
	}

	@Test
	void itIsBuiltOnce() {
		given(this.competition.isThere()).willReturn(true);
		this.runner.start();
		then(this.competition).should(never()).build();
	}

	@Test
	void stopEndsIt() {
		this.runner.start();
		this.runner.stop();
		assertThat(this.runner.isRunning()).isFalse();
	}

}
