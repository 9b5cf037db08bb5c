package rimebook.stand.web;

import java.nio.file.Path;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.testsupport.Crew;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;

/** The power fails in the middle of a programme, and the service comes up again. */
class StandClockPowerCutIntegrationTests {

	@TempDir
	private Path folder;

	private String referee = "";

	@Test
	void clockRunsOnFromTheSameMomentAfterThePowerFailed() throws Exception {
		try (ServiceProcess service = new ServiceProcess(ServiceProcess.onH2(), this.folder.resolve("log"),
				"-XX:TieredStopAtLevel=1")) {
			SegmentId segment = teamOnTheIce(service);
			service.start();
			Element started = stand(service, segment).press("form[action$=/clock/start]")
				.document()
				.selectFirst("#clock .dial");
			service.kill();
			service.start();
			Visitor.Page again = stand(service, segment);
			Element dial = again.document().selectFirst("#clock .dial");
			assertThat(dial.attr("data-since")).isNotEmpty().isEqualTo(started.attr("data-since"));
			assertThat(seconds(dial)).isGreaterThan(seconds(started));
			assertThat(again.press("form[action$=/clock/stop]").document().select("#clock-take-back").text())
				.isEqualTo("Take back the stop");
		}
	}

	private SegmentId teamOnTheIce(ServiceProcess service) {
		try (ConfigurableApplicationContext context = service.within()) {
			this.referee = Crew.add(context, Role.REFEREE);
			SmallCompetition day = SmallCompetition.running(context, 2, 3);
			SegmentId segment = day.open(1);
			day.callNext(1);
			return segment;
		}
	}

	private Visitor.Page stand(ServiceProcess service, SegmentId segment) {
		return Visitor.signedIn(service.port(), this.referee, Crew.PASSWORD).open("/desk/stand/" + segment);
	}

	private static int seconds(Element dial) {
		String[] time = dial.select(".time").text().split(":");
		return Integer.parseInt(time[0]) * 60 + Integer.parseInt(time[1]);
	}

}
