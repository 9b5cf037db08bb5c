package rimebook.live;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;
import rimebook.results.ResultVersion;

/**
 * Names the line of the record that tells of a published version. It is the same for
 * ever, so a version's page has the same bytes each time it is made.
 */
@Component
class VersionAnchors {

	private final RecordAnchors anchors;

	VersionAnchors(RecordAnchors anchors) {
		this.anchors = anchors;
	}

	/** The line, {@code null} without a version. */
	@Nullable Anchor of(@Nullable ResultVersion version) {
		return (version == null) ? null
				: this.anchors.ofVersion(version.scopeId(), version.number(), version.fingerprint()).orElse(null);
	}

}
