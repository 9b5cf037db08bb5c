package rimebook.standby;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.time.Duration;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class PaceTests {

	private static final Duration LONG = Duration.ofMinutes(1);

	@Test
	void restsThreeTimesAsLongAsItWorks() throws IOException {
		Pace pace = new Pace(LONG);
		assertThat(restedWhileReading(pace)).isGreaterThan(Duration.ofMillis(3 * 2));
		assertThat(restedWhileWriting(pace)).isGreaterThan(Duration.ofMillis(3 * 2));
	}

	@Test
	void doesNotRestWhereSomebodyWaits() throws IOException {
		Pace pace = new Pace(LONG);
		pace.hurry(true);
		assertThat(pace.rested()).isZero();
		restedWhileReading(pace);
		assertThat(pace.rested()).isZero();
		restedWhileReading(Pace.NONE);
		assertThat(Pace.NONE.rested()).isZero();
		pace.hurry(false);
		assertThat(restedWhileReading(pace)).isPositive();
	}

	@Test
	void restsNoLongerThanItMay() throws IOException {
		Pace pace = new Pace(Duration.ofNanos(1));
		Duration once = restedWhileReading(pace);
		assertThat(once).isPositive();
		work();
		pace.rest();
		assertThat(pace.rested()).as("it has had its rest").isEqualTo(once);
		pace.begin();
		assertThat(pace.rested()).as("another piece of work").isZero();
	}

	private static Duration restedWhileReading(Pace pace) throws IOException {
		pace.begin();
		try (InputStream in = pace.over(new ByteArrayInputStream(new byte[3]))) {
			work();
			assertThat(in.read(new byte[2], 0, 2)).isEqualTo(2);
			assertThat(in.read(new byte[2], 0, 2)).isEqualTo(1);
		}
		return pace.rested();
	}

	private static Duration restedWhileWriting(Pace pace) throws IOException {
		pace.begin();
		try (OutputStream out = pace.over(OutputStream.nullOutputStream())) {
			work();
			out.write(new byte[2], 0, 2);
		}
		return pace.rested();
	}

	/** Two milliseconds of a processor and a bit. */
	private static void work() {
		long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
		long now = began;
		while (now - began <= Duration.ofMillis(2).toNanos()) {
			now = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
		}
	}

}
