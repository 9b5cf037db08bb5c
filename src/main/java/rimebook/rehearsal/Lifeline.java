package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

import org.springframework.boot.SpringApplication;

/**
 * What binds the process of a rehearsal to the one that started it: once the other end of
 * its input is closed, it deletes what it has and ends.
 */
final class Lifeline {

	/** For what does not end by itself. */
	private static final long PATIENCE = 10;

	private Lifeline() {
	}

	/** Hold on to it. */
	static void hold(Path folder) {
		SpringApplication.getShutdownHandlers().add(() -> delete(folder));
		Thread thread = new Thread(() -> wait(folder), "lifeline");
		thread.setDaemon(true);
		thread.start();
	}

	private static void wait(Path folder) {
		try {
			while (System.in.read() >= 0) {
				// Nobody says anything here.
			}
		}
		catch (IOException ex) {
			// As good as its end.
		}
		Thread last = new Thread(() -> {
			sleep();
			delete(folder);
			Runtime.getRuntime().halt(1);
		}, "lifeline-end");
		last.setDaemon(true);
		last.start();
		System.exit(0);
	}

	private static void sleep() {
		try {
			TimeUnit.SECONDS.sleep(PATIENCE);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	private static void delete(Path folder) {
		try {
			new RehearsalFolder(folder).delete();
		}
		catch (IOException ex) {
			System.err.println(ex);
		}
	}

}
