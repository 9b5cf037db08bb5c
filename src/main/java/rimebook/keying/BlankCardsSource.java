package rimebook.keying;

import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentPlace;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;

/** Gathers what stands on the blank cards of a segment. */
@Component
class BlankCardsSource {

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final Panels panels;

	private final BlankStarts starts;

	private final Clock clock;

	BlankCardsSource(Competitions competitions, RuleSets ruleSets, Panels panels, BlankStarts starts, Clock clock) {
		this.competitions = competitions;
		this.ruleSets = ruleSets;
		this.panels = panels;
		this.starts = starts;
		this.clock = clock;
	}

	/**
	 * Gather them.
	 * @param seat the number of the one seat wanted, {@code null} for all
	 * @param team the starting number of the one team wanted, {@code null} for all
	 * @throws RuleViolationException {@code order-not-drawn}
	 * @throws NotFoundException if there is no such seat or team
	 */
	@Transactional(readOnly = true)
	public BlankCards of(SegmentId segment, @Nullable Integer seat, @Nullable Integer team) {
		EventView event = this.competitions.eventOf(segment);
		CompetitionView competition = this.competitions.competition(event.competition());
		List<SeatView> seats = this.panels.withCard(event.id())
			.stream()
			.filter((one) -> seat == null || (one.kind() == SeatKind.JUDGE && one.number() == seat))
			.toList();
		List<BlankCards.Start> starts = this.starts.of(segment)
			.stream()
			.filter((one) -> team == null || one.number() == team)
			.toList();
		if (seats.isEmpty() || starts.isEmpty()) {
			throw new NotFoundException("card-not-found",
					seats.isEmpty() ? Sentence.of("keying.no-card-of-seat", String.valueOf(seat))
							: Sentence.of("keying.no-card-of-team", String.valueOf(team)));
		}
		return new BlankCards(new SegmentPlace(competition, event, event.segment(segment)),
				ZonedDateTime.ofInstant(this.clock.instant(), competition.zone()), seats, starts,
				event.isJudgedByPoints() ? components(event, segment) : List.of());
	}

	private List<String> components(EventView event, SegmentId segment) {
		return this.ruleSets.of(event, event.segment(segment))
			.components()
			.stream()
			.map(SegmentRules.ComponentRule::name)
			.toList();
	}

}
