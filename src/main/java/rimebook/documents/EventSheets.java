package rimebook.documents;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Final result, medals and certificates: three sheets of an event's standing. */
@Configuration(proxyBeanMethods = false)
class EventSheets {

	@Bean
	DocumentSource finalResult(Subjects subjects, PublishedVersions versions, Standings standings) {
		return new Sheet(DocumentKind.FINAL_RESULT, subjects, versions, standings);
	}

	@Bean
	DocumentSource medals(Subjects subjects, PublishedVersions versions, Standings standings) {
		return new Sheet(DocumentKind.MEDALS, subjects, versions, standings);
	}

	@Bean
	DocumentSource certificates(Subjects subjects, PublishedVersions versions, Standings standings) {
		return new Sheet(DocumentKind.CERTIFICATES, subjects, versions, standings);
	}

	private record Sheet(DocumentKind kind, Subjects subjects, PublishedVersions versions,
			Standings standings) implements DocumentSource {

		@Override
		public List<DocumentRef> offered(EventView event) {
			return this.standings.latest(event.id())
				.filter(this::canBePrinted)
				.map((version) -> DocumentRef.of(this.kind, event.id(), version.number()))
				.stream()
				.toList();
		}

		/** A certificate that is handed out cannot be taken back. */
		private boolean canBePrinted(ResultVersion version) {
			return this.kind != DocumentKind.CERTIFICATES || version.state() == ResultVersion.ResultState.OFFICIAL;
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			ResultVersion version = this.versions.of(ref);
			if (!canBePrinted(version)) {
				throw new RuleViolationException("not-signed", Sentence.of("documents.not-signed"));
			}
			DocumentContent.Subject at = this.subjects.of(ref.event());
			return this.versions.shown(at, version,
					new EventBody(version.standing(),
							at.event()
								.segments()
								.stream()
								.flatMap((segment) -> this.versions.before(version, segment)
									.map((combined) -> part(segment, combined))
									.stream())
								.toList()));
		}

		private SegmentPart part(SegmentView segment, ResultVersion combined) {
			return new SegmentPart(combined.standing().segment(),
					this.versions.posting(segment.id(), combined.number()),
					Objects.requireNonNullElse(combined.standing().officials(), List.of()));
		}

	}

	/**
	 * What the three are laid out from.
	 *
	 * @param segments those that it combines, in their order
	 */
	record EventBody(Standing standing, List<SegmentPart> segments) implements DocumentContent.NamesPeople {

		private static final int STEPS = 3;

		/** The teams that have a place. */
		public List<Standing.Row> placed() {
			return this.standing.rows().stream().filter((row) -> row.place() != null).toList();
		}

		/** The teams of the three steps; two on one step leave the next one empty. */
		public List<Standing.Row> honoured() {
			return placed().stream().filter((row) -> Objects.requireNonNull(row.place()) <= STEPS).toList();
		}

		/** Tell whether the same people judged all of it. */
		public boolean isOfOnePanel() {
			return this.segments.stream().map(SegmentPart::officials).distinct().count() == 1;
		}

		@Override
		public EventBody withoutPeople() {
			return new EventBody(this.standing.withoutPeople(),
					this.segments.stream()
						.map((part) -> new SegmentPart(part.name(), SegmentSheets.unnamed(part.posting()), List.of()))
						.toList());
		}

	}

	/**
	 * A segment as it was when it was combined.
	 *
	 * @param posting {@code null} where it was not posted by then
	 * @param officials who sat on its panel; empty in versions from before they were kept
	 */
	record SegmentPart(String name, SegmentResultView.@Nullable Posting posting, List<Standing.Official> officials) {
	}

}
