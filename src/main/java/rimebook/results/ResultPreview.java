package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.performances.Amendment;
import rimebook.performances.ClosedCards;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.StatusCorrection;
import rimebook.published.Standing;

/** Shows what a correction would do to every place, writing nothing. */
@Service
public class ResultPreview {

	private final StandingDrafts drafts;

	private final EventFieldReader fields;

	private final ClosedCards cards;

	private final StatusCorrection statuses;

	private final PerformanceRegister performances;

	ResultPreview(StandingDrafts drafts, EventFieldReader fields, ClosedCards cards, StatusCorrection statuses,
			PerformanceRegister performances) {
		this.performances = performances;
		this.drafts = drafts;
		this.fields = fields;
		this.cards = cards;
		this.statuses = statuses;
	}

	/**
	 * Return every team's place now and as it would be with something else on a card or
	 * list, or if a performance had come through otherwise: a team that would have
	 * withdrawn has left the event, one that would not takes part.
	 * @throws rimebook.shared.RuleViolationException if no standing could be made
	 */
	@Transactional(readOnly = true)
	public ResultEffect of(Amendment.SupposedChange<?> change) {
		PerformanceView performance = this.performances.find(change.performance());
		if (change.amendment() instanceof StatusCorrection.StatusAmendment other) {
			return ifStatus(performance, other.status());
		}
		SegmentId segment = performance.segment();
		return effect(this.drafts.of(segment, this.cards.ofSegmentIf(segment, change)));
	}

	private ResultEffect ifStatus(PerformanceView performance, PerformanceStatus supposed) {
		List<EntryId> toSkate = new ArrayList<>(this.fields.toSkate(performance.segment()));
		toSkate.remove(performance.entry());
		if (!supposed.isDone()) {
			toSkate.add(performance.entry());
		}
		StandingDrafts.Supposition supposition = new StandingDrafts.Supposition(performance.entry().toString(),
				supposed == PerformanceStatus.WITHDRAWN, this.statuses.following(performance.id()));
		return effect(this.drafts.of(performance.segment(),
				this.cards.ofSegmentIf(performance.segment(), performance.id(), supposed), toSkate, supposition));
	}

	private static ResultEffect effect(StandingDrafts.Draft draft) {
		return new ResultEffect(moves(draft.segmentBefore(), draft.segment()),
				moves(draft.eventBefore(), draft.event()));
	}

	private static List<ResultEffect.Move> moves(@Nullable Standing before, Standing after) {
		Map<String, Integer> places = PreviousPlaces.of(before);
		Stream<ResultEffect.Move> there = after.rows()
			.stream()
			.map((row) -> new ResultEffect.Move(row.team(), places.get(row.entry()), row.place()));
		return Stream.concat(there, gone(before, after)).toList();
	}

	/** Teams that would be in no row any more, since they would be still to skate. */
	private static Stream<ResultEffect.Move> gone(@Nullable Standing before, Standing after) {
		Set<String> left = after.rows().stream().map(Standing.Row::entry).collect(Collectors.toSet());
		return (before == null) ? Stream.empty()
				: before.rows()
					.stream()
					.filter((row) -> !left.contains(row.entry()))
					.map((row) -> new ResultEffect.Move(row.team(), row.place(), null));
	}

	/**
	 * What a correction would do to every place, before anybody approves it.
	 *
	 * @param segment each team's place in the segment now and then
	 * @param event each team's place in the whole event now and then
	 */
	public record ResultEffect(List<Move> segment, List<Move> event) {

		/** One team's place before and after; {@code null} for none. */
		public record Move(String team, @Nullable Integer before, @Nullable Integer after) {

			/** Tell whether the correction would move this team. */
			public boolean isMoved() {
				return !java.util.Objects.equals(this.before, this.after);
			}

		}

		/** Tell whether any place would change. */
		public boolean changesPlaces() {
			return this.segment.stream().anyMatch(Move::isMoved) || this.event.stream().anyMatch(Move::isMoved);
		}

	}

}
