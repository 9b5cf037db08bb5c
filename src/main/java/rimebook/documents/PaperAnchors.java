package rimebook.documents;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;

/**
 * What documents carry of the record, and that whoever has one of a version holds its
 * line. What has no version carries the end of the record of each moment, which would be
 * noted with every sheet, so that is not.
 */
@Component
class PaperAnchors {

	private final RecordAnchors record;

	private final Map<String, Long> noted = new ConcurrentHashMap<>();

	PaperAnchors(RecordAnchors record) {
		this.record = record;
	}

	/**
	 * The line that tells of the version, the last one of the record where there are no
	 * versions; {@code null} where there is none.
	 */
	@Nullable Anchor of(DocumentRef ref, DocumentContent.Edition edition) {
		return ((edition.version() > 0) ? this.record.ofVersion(ref.subject(), edition.version(), edition.recorded())
				: this.record.head())
			.orElse(null);
	}

	/** The newest line that tells of one of these things. */
	Optional<Anchor> newestAbout(Set<UUID> things) {
		return this.record.newestAbout(things);
	}

	/**
	 * Note that an anchor is kept on paper, once for each version. A sheet is printed
	 * whether that can be written or not.
	 */
	void note(DocumentContent content, @Nullable Anchor anchor) {
		if (anchor == null || content.edition().version() == 0) {
			return;
		}
		DocumentContent.Names names = content.at().names();
		String place = "Paper: " + names.event() + (names.segment().isEmpty() ? "" : ", " + names.segment()) + ", "
				+ names.competition();
		Long before = this.noted.get(place);
		if (before == null || before < anchor.line()) {
			this.noted.merge(place, anchor.line(), Math::max);
			this.record.noteKeptForGood(place, anchor);
		}
	}

}
