package rimebook.documents;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.results.ResultVersion;
import rimebook.review.AspectReview;
import rimebook.review.CompetitionReview;
import rimebook.review.EventReview;
import rimebook.review.PanelReviews;
import rimebook.review.SegmentReview;

/**
 * How the judges of an event agreed in a version of its standing, and how those of the
 * competition did at that time. It is the referee's alone, so it is never among the
 * documents that are offered, bound together or kept with a competition; the page of the
 * review has the way to it.
 */
@Component
class PanelReviewSheet implements DocumentSource {

	private final Subjects subjects;

	private final PublishedVersions versions;

	private final PanelReviews reviews;

	PanelReviewSheet(Subjects subjects, PublishedVersions versions, PanelReviews reviews) {
		this.subjects = subjects;
		this.versions = versions;
		this.reviews = reviews;
	}

	@Override
	public DocumentKind kind() {
		return DocumentKind.PANEL_REVIEW;
	}

	@Override
	public List<DocumentRef> offered(EventView event) {
		return List.of();
	}

	@Override
	public DocumentContent read(DocumentRef ref) {
		ResultVersion version = this.versions.of(ref);
		EventReview review = this.reviews.of(version);
		CompetitionReview whole = this.reviews.of(review.competition().id(), version.publishedAt());
		Reviewed body = new Reviewed(review.isOfficial(), review.segments(), review.together(),
				(whole.events().size() > 1) ? whole.together() : List.of());
		return this.versions.shown(this.subjects.of(ref.event()), version, body).withFingerprint(Fingerprint.of(body));
	}

	/**
	 * What it is laid out from: nothing that may change while the version is the same.
	 *
	 * @param official whether every segment was signed
	 * @param together over the event; empty for one segment
	 * @param competition over the competition; empty for one event
	 */
	record Reviewed(boolean official, List<SegmentReview> segments, List<AspectReview> together,
			List<AspectReview> competition) {
	}

}
