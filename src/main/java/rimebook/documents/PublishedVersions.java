package rimebook.documents;

import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Cancellations;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;

/** Finds the version of a standing that a document shows. */
@Component
class PublishedVersions {

	private final Standings standings;

	private final Cancellations cancellations;

	PublishedVersions(Standings standings, Cancellations cancellations) {
		this.standings = standings;
		this.cancellations = cancellations;
	}

	/**
	 * The version that a document names, the newest where it names none.
	 * @throws NotFoundException if it was never published
	 */
	ResultVersion of(DocumentRef ref) {
		return find(ref).orElseThrow(() -> NotFoundException.of("version", ref.version()));
	}

	private Optional<ResultVersion> find(DocumentRef ref) {
		return (ref.version() == 0) ? newest(ref) : switch (ref.kind().about()) {
			case SEGMENT -> this.standings.version(ref.segment(), ref.version());
			case EVENT -> this.standings.version(ref.event(), ref.version());
		};
	}

	/** The newest version of what a document is about; empty before there is one. */
	Optional<ResultVersion> newest(DocumentRef ref) {
		return switch (ref.kind().about()) {
			case SEGMENT -> this.standings.latest(ref.segment());
			case EVENT -> this.standings.latest(ref.event());
		};
	}

	/**
	 * The version of a segment that a version of its event combined; empty where it took
	 * place later or was cancelled then.
	 */
	Optional<ResultVersion> before(ResultVersion event, SegmentView segment) {
		return this.cancellations.tookPlace(segment, event.publishedAt())
				? this.standings.asOf(segment.id(), event.publishedAt()) : Optional.empty();
	}

	/**
	 * The posting that a version of a segment is, or that it came after; {@code null}
	 * before the first.
	 */
	SegmentResultView.@Nullable Posting posting(SegmentId segment, int version) {
		return this.standings.postings(segment)
			.stream()
			.filter((posting) -> posting.number() <= version)
			.reduce((earlier, later) -> later)
			.orElse(null);
	}

	/** What a document says of a version about itself. */
	DocumentContent shown(DocumentContent.Subject at, ResultVersion version, Object body) {
		boolean official = version.state() == ResultVersion.ResultState.OFFICIAL;
		Standing standing = version.standing();
		Standing.Venue venue = this.standings.venue(version, at.event().competition()).orElse(at.venue());
		return new DocumentContent(at.asIn(standing, venue),
				new DocumentContent.Edition(version.number(),
						official ? DocumentContent.Trust.OFFICIAL : DocumentContent.Trust.PROVISIONAL,
						version.publishedAt(), version.fingerprint()),
				standing.ruleSet(), body, Set.of());
	}

}
