package rimebook.documents;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventView;
import rimebook.results.ResultVersion;
import rimebook.shared.NotFoundException;

/**
 * Reads what documents say, each at one moment. Laying out takes longer and needs no
 * connection to the database, so it comes after.
 */
@Component
@Transactional(readOnly = true)
class DocumentReading {

	private final Map<DocumentKind, DocumentSource> sources = new EnumMap<>(DocumentKind.class);

	private final PublishedVersions versions;

	DocumentReading(List<DocumentSource> sources, PublishedVersions versions) {
		this.versions = versions;
		sources.forEach((source) -> this.sources.put(source.kind(), source));
	}

	/** The documents that there are now for an event, in the order of their kinds. */
	List<DocumentRef> offered(EventView event) {
		return this.sources.values()
			.stream()
			.flatMap((source) -> source.offered(event).stream())
			.sorted(Comparator.comparing(DocumentRef::kind))
			.toList();
	}

	/**
	 * Read one.
	 * @throws NotFoundException if there is none
	 * @throws rimebook.shared.RuleViolationException if it cannot be printed yet
	 */
	DocumentContent read(DocumentRef ref) {
		return Optional.ofNullable(this.sources.get(ref.kind()))
			.orElseThrow(() -> NotFoundException.of("document", ref.kind().word()))
			.read(ref);
	}

	/**
	 * The number of the newest version of what a document is about, whether that can be
	 * printed or not; 0 before there is one.
	 */
	int newestVersion(DocumentRef ref) {
		return this.versions.newest(ref).map(ResultVersion::number).orElse(0);
	}

}
