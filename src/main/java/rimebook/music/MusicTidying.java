package rimebook.music;

import java.io.IOException;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Tidies up what a life of the service left behind that ended in the middle of an upload,
 * or that took one back. Done once, before the service is open to anybody: later nobody
 * could tell such a file from one that is just being handed in.
 */
@Component
class MusicTidying implements SmartLifecycle {

	private static final Log log = LogFactory.getLog(MusicTidying.class);

	private final MusicStore store;

	private final MusicVersionRepository versions;

	private volatile boolean done;

	MusicTidying(MusicStore store, MusicVersionRepository versions) {
		this.store = store;
		this.versions = versions;
	}

	@Override
	public void start() {
		this.done = true;
		try {
			int files = this.store.tidy(this.versions.digests());
			if (files > 0) {
				log.info("Files of music that nobody handed in to the end were deleted: " + files);
			}
		}
		catch (IOException | RuntimeException ex) {
			log.warn("Files of music that nobody handed in to the end are still there", ex);
		}
	}

	@Override
	public void stop() {
		this.done = false;
	}

	@Override
	public boolean isRunning() {
		return this.done;
	}

	/** What runs on may be writing when the others start again. */
	@Override
	public boolean isPauseable() {
		return false;
	}

	/** Long before the web server. */
	@Override
	public int getPhase() {
		return 0;
	}

}
