package rimebook.documents;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.published.JudgedRow;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;

/** The result of a segment, and what every judge gave: two sheets of one standing. */
@Configuration(proxyBeanMethods = false)
class SegmentSheets {

	@Bean
	DocumentSource segmentResult(Subjects subjects, PublishedVersions versions, Standings standings) {
		return new Sheet(DocumentKind.SEGMENT_RESULT, subjects, versions, standings);
	}

	@Bean
	DocumentSource judgesDetail(Subjects subjects, PublishedVersions versions, Standings standings) {
		return new Sheet(DocumentKind.JUDGES_DETAIL, subjects, versions, standings);
	}

	private record Sheet(DocumentKind kind, Subjects subjects, PublishedVersions versions,
			Standings standings) implements DocumentSource {

		@Override
		public List<DocumentRef> offered(EventView event) {
			return event.held()
				.segments()
				.stream()
				.map(SegmentView::id)
				.flatMap((segment) -> this.standings.latest(segment).stream())
				.map((version) -> new DocumentRef(this.kind, version.scopeId(), version.number()))
				.toList();
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			ResultVersion version = this.versions.of(ref);
			return this.versions.shown(this.subjects.of(ref.segment()), version, body(version, ref));
		}

		private SegmentBody body(ResultVersion version, DocumentRef ref) {
			Standing standing = version.standing();
			return new SegmentBody(standing,
					standing.rows().stream().map((row) -> JudgedRow.of(row, standing)).toList(),
					this.versions.posting(ref.segment(), version.number()),
					this.standings.signatures(ref.segment(), version.number()));
		}

	}

	/**
	 * What both sheets are laid out from.
	 *
	 * @param rows its teams, in place order
	 * @param posting {@code null} where the standing was not posted by then
	 * @param signatures of referee and accountant; empty where it is not signed
	 */
	record SegmentBody(Standing standing, List<JudgedRow> rows, SegmentResultView.@Nullable Posting posting,
			List<SegmentResultView.Signature> signatures) implements DocumentContent.NamesPeople {

		@Override
		public SegmentBody withoutPeople() {
			return new SegmentBody(this.standing.withoutPeople(), this.rows, unnamed(this.posting), List.of());
		}

	}

	/** The same posting without who did it. */
	static SegmentResultView.@Nullable Posting unnamed(SegmentResultView.@Nullable Posting posting) {
		return (posting == null) ? null
				: new SegmentResultView.Posting(posting.segment(), posting.number(),
						new SegmentResultView.Posted(posting.postedAt(), ""), "", posting.conductUntil(),
						posting.calculationUntil());
	}

}
