package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collection;
import java.util.Set;

import org.springframework.core.io.InputStreamSource;
import org.springframework.core.io.Resource;
import org.springframework.stereotype.Component;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Files on their way in and out: how large, of what kind, and where they lie. */
@Component
class MusicFiles {

	private final MusicSettings settings;

	private final Recognition recognition;

	private final MusicStore store;

	MusicFiles(MusicSettings settings, Recognition recognition, MusicStore store) {
		this.settings = settings;
		this.recognition = recognition;
		this.store = store;
	}

	/** Find what a file is, or refuse it. */
	Recognition.Recognised look(InputStreamSource file, long length) throws IOException {
		if (length == 0) {
			throw new RuleViolationException("music-missing", "file", Sentence.of("music.missing"));
		}
		if (length > this.settings.most().toBytes()) {
			throw new RuleViolationException("music-too-large", "file",
					Sentence.of("music.too-large", tenths(length), (int) this.settings.most().toMegabytes()));
		}
		return this.recognition.recognise(file, length);
	}

	/** Megabytes with one decimal, rounded up. */
	private static String tenths(long bytes) {
		long tenths = (bytes * 10 + 1024 * 1024 - 1) / (1024 * 1024);
		return tenths / 10 + "." + tenths % 10;
	}

	/**
	 * Write its bytes down.
	 * @throws IOException if there are others than it was said
	 */
	MusicStore.Arrived write(InputStreamSource file, long length) throws IOException {
		try (InputStream bytes = file.getInputStream()) {
			MusicStore.Arrived arrived = this.store.write(bytes);
			if (arrived.bytes() != length) {
				this.store.drop(arrived);
				throw new IOException("Of " + length + " bytes " + arrived.bytes() + " came");
			}
			return arrived;
		}
	}

	void keep(MusicStore.Arrived arrived) throws IOException {
		this.store.keep(arrived);
	}

	/** What was kept is not there to be dropped any more. */
	void drop(MusicStore.Arrived arrived) throws IOException {
		this.store.drop(arrived);
	}

	/** The digests of those whose bytes are here. */
	Set<String> here(Collection<MusicVersion> versions) {
		return this.store.here(versions.stream().map(MusicVersion::digest).distinct().toList());
	}

	Resource bytes(MusicVersion version) {
		return this.store.bytes(version.digest(), version.bytes());
	}

}
