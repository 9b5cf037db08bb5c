package rimebook.results;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.published.Standing;
import rimebook.published.StandingText;

/** Reads published versions; nothing unpublished passes here. */
@Service
@Transactional(readOnly = true)
public class Standings {

	private final ResultVersionRepository versions;

	private final SegmentResultRepository results;

	private final PostingRepository postings;

	private final SignatureBook signatures;

	private final EarlierVenues venues;

	private final StandingText text;

	Standings(ResultVersionRepository versions, SegmentResultRepository results, PostingRepository postings,
			SignatureBook signatures, EarlierVenues venues, StandingText text) {
		this.postings = postings;
		this.signatures = signatures;
		this.venues = venues;
		this.versions = versions;
		this.results = results;
		this.text = text;
	}

	/** Return the newest version of a segment's standing, if any was published. */
	public Optional<ResultVersion> latest(SegmentId segment) {
		return latest(segment.value());
	}

	/** Return the newest version of an event's standing, if any was published. */
	public Optional<ResultVersion> latest(EventId event) {
		return latest(event.value());
	}

	/** Return the version of a segment's standing that was the newest at a moment. */
	public Optional<ResultVersion> asOf(SegmentId segment, Instant moment) {
		return asOf(segment.value(), moment);
	}

	/** Return the version of an event's standing that was the newest at a moment. */
	public Optional<ResultVersion> asOf(EventId event, Instant moment) {
		return asOf(event.value(), moment);
	}

	/**
	 * Return the entry that was marked last in a segment, whatever its number; empty
	 * before the first.
	 */
	public Optional<String> lastSkated(SegmentId segment) {
		return this.versions
			.findFirstByScopeIdAndCauseOrderByNumberDesc(segment.value(), ResultVersion.Cause.CARDS_CLOSED)
			.map(this::read)
			.flatMap((version) -> lastAdded(version.standing(), version(segment, version.number() - 1)));
	}

	private static Optional<String> lastAdded(Standing standing, Optional<ResultVersion> before) {
		Set<String> there = before.stream()
			.flatMap((version) -> version.standing().rows().stream())
			.map(Standing.Row::entry)
			.collect(Collectors.toSet());
		return standing.rows().stream().map(Standing.Row::entry).filter((entry) -> !there.contains(entry)).findFirst();
	}

	/** Return one version of a segment's standing. */
	public Optional<ResultVersion> version(SegmentId segment, int number) {
		return version(segment.value(), number);
	}

	/** Return one version of an event's standing. */
	public Optional<ResultVersion> version(EventId event, int number) {
		return version(event.value(), number);
	}

	/** List all versions of a segment's standing, newest first. */
	public List<ResultVersion> versions(SegmentId segment) {
		return this.versions.findByScopeIdOrderByNumberDesc(segment.value()).stream().map(this::read).toList();
	}

	/** List what was corrected in a segment up to a version, in the order it was. */
	public List<CorrectedVersion> corrections(SegmentId segment, int number) {
		return this.versions
			.findByScopeIdAndCauseAndNumberLessThanEqualOrderByNumber(segment.value(), ResultVersion.Cause.CORRECTED,
					number)
			.stream()
			.map(this::read)
			.map(CorrectedVersion::of)
			.toList();
	}

	/** Return where a segment's result stands; empty before the segment was opened. */
	public Optional<SegmentResultView> result(SegmentId segment) {
		return this.results.findById(segment.value()).map(SegmentResult::view);
	}

	/**
	 * Where and when the competition of a version was held, as it was when that was
	 * published; empty where a version from before that was kept was restored.
	 */
	public Optional<Standing.Venue> venue(ResultVersion version, CompetitionId competition) {
		return Optional.ofNullable(version.standing().venue()).or(() -> this.venues.of(competition));
	}

	/** List every posting of a segment's result, oldest first; empty before the first. */
	public List<SegmentResultView.Posting> postings(SegmentId segment) {
		return this.postings.findBySegmentOrderByNumber(segment.value()).stream().map(PostingRow::view).toList();
	}

	/**
	 * Who signed a version, referee first; empty where it is not signed. It stays so when
	 * the result is opened again.
	 */
	public List<SegmentResultView.Signature> signatures(SegmentId segment, int number) {
		return this.signatures.of(segment, number);
	}

	private Optional<ResultVersion> latest(UUID scope) {
		return this.versions.findFirstByScopeIdOrderByNumberDesc(scope).map(this::read);
	}

	private Optional<ResultVersion> asOf(UUID scope, Instant moment) {
		return this.versions.findFirstByScopeIdAndPublishedAtLessThanEqualOrderByNumberDesc(scope, moment)
			.map(this::read);
	}

	private Optional<ResultVersion> version(UUID scope, int number) {
		return this.versions.findByScopeIdAndNumber(scope, number).map(this::read);
	}

	private ResultVersion read(ResultVersionRow row) {
		return row.with(this.text.read(row.body()));
	}

	/**
	 * A version that was published because two officials corrected something, with the
	 * places that moved by it. It stays readable on every later version, official ones
	 * among them.
	 *
	 * @param moved the teams whose place is another than in the version before
	 */
	public record CorrectedVersion(ResultVersion version, List<ResultPreview.ResultEffect.Move> moved) {

		public CorrectedVersion {
			moved = List.copyOf(moved);
		}

		static CorrectedVersion of(ResultVersion version) {
			return new CorrectedVersion(version,
					version.standing()
						.rows()
						.stream()
						.filter((row) -> !Objects.equals(row.place(), row.previousPlace()))
						.map((row) -> new ResultPreview.ResultEffect.Move(row.team(), row.previousPlace(), row.place()))
						.toList());
		}

	}

}
