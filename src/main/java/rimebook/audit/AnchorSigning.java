package rimebook.audit;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Signs anchors by the key in the file that {@code rimebook.record.key} names. Without
 * one, anchors go out unsigned. A file that cannot be read must not keep a competition
 * from beginning: the page of anchors says so instead.
 */
@Component
class AnchorSigning {

	private static final Log log = LogFactory.getLog(AnchorSigning.class);

	private final @Nullable RecordKey key;

	private final String fault;

	AnchorSigning(@Value("${rimebook.record.key:}") String file) {
		RecordKey read = null;
		String why = "";
		try {
			read = file.isBlank() ? null : RecordKey.read(Path.of(file));
		}
		catch (IOException | InvalidPathException ex) {
			why = file + ": " + ex.getMessage();
			log.error("Anchors of the record are not signed; the key cannot be read from " + why);
		}
		this.key = read;
		this.fault = why;
	}

	/** The anchor, signed where there is a key. */
	Anchor sign(Anchor anchor) {
		return (this.key != null) ? this.key.sign(anchor) : anchor;
	}

	/** The public key, empty if anchors are not signed. */
	Optional<String> publicKey() {
		return Optional.ofNullable(this.key).map(RecordKey::publicPem);
	}

	/** Why the key that was named is not used, empty if it is or none was named. */
	String fault() {
		return this.fault;
	}

}
