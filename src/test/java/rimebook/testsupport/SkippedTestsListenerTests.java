package rimebook.testsupport;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

class SkippedTestsListenerTests {

	private static final LauncherConfig BARE = LauncherConfig.builder()
		.enableTestExecutionListenerAutoRegistration(false)
		.enableLauncherSessionListenerAutoRegistration(false)
		.enableLauncherDiscoveryListenerAutoRegistration(false)
		.enablePostDiscoveryFilterAutoRegistration(false)
		.build();

	@Test
	void saysNothingOfSkippingWhereNothingWasSkipped() {
		assertThat(linesAfter(NeedsNothing.class)).containsExactly("PostgreSQL tests ran: 0");
	}

	@Test
	void countsTheTestsThatMetPostgres() {
		assertThat(linesAfter(NeedsNothing.class, NeedsDocker.class)).containsExactly("PostgreSQL tests ran: 4");
	}

	@Test
	void saysInOneLineHowMuchWasSkippedAndWhy() {
		assertThat(linesAfter(NeedsNothing.class, SkippedClass.class, SkippedMethods.class)).containsExactly(
				"PostgreSQL tests ran: 0",
				"*** SKIPPED 4 TEST METHODS: 1 because: the rink is closed; 3 because: there is no ice ***");
	}

	private static String[] linesAfter(Class<?>... classes) {
		ByteArrayOutputStream printed = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(printed, true, StandardCharsets.UTF_8);
		LauncherFactory.create(BARE).execute(request(classes), new SkippedTestsListener(out));
		return printed.toString(StandardCharsets.UTF_8).lines().toArray(String[]::new);
	}

	private static LauncherDiscoveryRequest request(Class<?>... classes) {
		LauncherDiscoveryRequestBuilder request = LauncherDiscoveryRequestBuilder.request()
			.configurationParameter("junit.jupiter.conditions.deactivate", DockerCondition.class.getName());
		for (Class<?> type : classes) {
			request.selectors(selectClass(type));
		}
		return request.build();
	}

	static class NeedsNothing {

		@Test
		void runs() {
		}

	}

	@RequiresDocker
	static class NeedsDocker {

		@Test
		void runs() {
		}

		@ParameterizedTest
		@ValueSource(ints = { 1, 2, 3 })
		void runsThrice(int each) {
		}

	}

	@Disabled("there is no ice")
	static class SkippedClass {

		@Test
		void isSkipped() {
		}

		@ParameterizedTest
		@ValueSource(ints = { 1, 2, 3 })
		void isSkippedAsOne(int each) {
		}

	}

	static class SkippedMethods {

		@Test
		@Disabled("there is no ice")
		void isSkipped() {
		}

		@Test
		void givesUp() {
			abort("the rink is closed");
		}

	}

}
