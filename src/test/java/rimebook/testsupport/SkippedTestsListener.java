package rimebook.testsupport;

import java.io.PrintStream;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.platform.commons.support.AnnotationSupport;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestSource;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Ends a test run by saying how many tests met PostgreSQL, and loudly how many tests did
 * not run and why: a green build must not hide what this machine could not try.
 */
public class SkippedTestsListener implements TestExecutionListener {

	private final PrintStream out;

	private final AtomicInteger postgresTests = new AtomicInteger();

	private final Map<String, Integer> skippedByReason = new TreeMap<>();

	private TestPlan plan;

	/** Used by the test runner, which finds this class as a service. */
	public SkippedTestsListener() {
		this(System.out);
	}

	SkippedTestsListener(PrintStream out) {
		this.out = out;
	}

	@Override
	public void testPlanExecutionStarted(TestPlan plan) {
		this.plan = plan;
	}

	@Override
	public synchronized void executionSkipped(TestIdentifier skipped, String reason) {
		this.skippedByReason.merge(reason, testsIn(skipped), Integer::sum);
	}

	@Override
	public synchronized void executionFinished(TestIdentifier finished, TestExecutionResult result) {
		if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
			String reason = result.getThrowable().map(Throwable::getMessage).orElse("an assumption did not hold");
			this.skippedByReason.merge(reason, testsIn(finished), Integer::sum);
		}
		else if (finished.isTest() && needsDocker(finished)) {
			this.postgresTests.incrementAndGet();
		}
	}

	@Override
	public synchronized void testPlanExecutionFinished(TestPlan plan) {
		this.out.println("PostgreSQL tests ran: " + this.postgresTests);
		if (!this.skippedByReason.isEmpty()) {
			this.out.println(skippedLine());
		}
	}

	private String skippedLine() {
		int total = this.skippedByReason.values().stream().mapToInt(Integer::intValue).sum();
		return this.skippedByReason.entrySet()
			.stream()
			.map((entry) -> entry.getValue() + " because: " + entry.getKey())
			.collect(Collectors.joining("; ",
					"*** SKIPPED " + total + " TEST METHOD" + ((total == 1) ? "" : "S") + ": ", " ***"));
	}

	private boolean needsDocker(TestIdentifier identifier) {
		return identifier.getSource().filter(SkippedTestsListener::needsDocker).isPresent()
				|| this.plan.getParent(identifier).filter(this::needsDocker).isPresent();
	}

	private static boolean needsDocker(TestSource source) {
		if (source instanceof MethodSource method) {
			return AnnotationSupport.isAnnotated(method.getJavaMethod(), RequiresDocker.class);
		}
		return source instanceof ClassSource type
				&& AnnotationSupport.isAnnotated(type.getJavaClass(), RequiresDocker.class);
	}

	private int testsIn(TestIdentifier skipped) {
		long methods = Stream.concat(Stream.of(skipped), this.plan.getDescendants(skipped).stream())
			.filter((identifier) -> identifier.getSource().filter(MethodSource.class::isInstance).isPresent())
			.count();
		return Math.toIntExact(Math.max(methods, 1));
	}

}
