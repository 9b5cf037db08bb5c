package rimebook.documents;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;

/**
 * Makes bundles one after the other and gives way to everything else, since a segment may
 * be under way meanwhile.
 */
@Component
class BundleThread implements DisposableBean {

	private final ExecutorService thread = Executors.newSingleThreadExecutor((work) -> {
		Thread thread = new Thread(work, "paper");
		thread.setDaemon(true);
		thread.setPriority(Thread.MIN_PRIORITY);
		return thread;
	});

	void run(Runnable work) {
		this.thread.execute(work);
	}

	/** Interrupts nobody: that would close the file of the database. */
	@Override
	public void destroy() {
		this.thread.shutdown();
	}

}
