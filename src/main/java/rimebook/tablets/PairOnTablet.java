package rimebook.tablets;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.placement.OwnCards;

/** The card of two marks, with the judge's own earlier marks beside it. */
@Component
class PairOnTablet implements TabletCard {

	private final OwnCards cards;

	private final Entries entries;

	PairOnTablet(OwnCards cards, Entries entries) {
		this.cards = cards;
		this.entries = entries;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPlacement();
	}

	@Override
	public String page() {
		return "tablets/card";
	}

	@Override
	public Given given(SeatId seat, EventView event, SegmentView segment, List<PerformanceView> all) {
		Map<PerformanceId, OwnCards.Card> own = this.cards.of(seat, all);
		Map<EntryId, String> teams = own.isEmpty() ? Map.of() : teams(event);
		List<JudgeTable.OwnCard> cards = all.stream()
			.sorted(Comparator.comparing(PerformanceView::startNumber))
			.flatMap((performance) -> Stream.ofNullable(own.get(performance.id()))
				.map((card) -> ownCard(performance, card, teams)))
			.toList();
		return new Given(event.rules(segment.kind()).cardTieBreak(), cards, Map.of());
	}

	/** In one query, since every tablet asks all the time. */
	private Map<EntryId, String> teams(EventView event) {
		return this.entries.ofEvent(event.id())
			.stream()
			.collect(Collectors.toMap(EntryView::id, (entry) -> entry.team().name()));
	}

	private static JudgeTable.OwnCard ownCard(PerformanceView performance, OwnCards.Card card,
			Map<EntryId, String> teams) {
		return new JudgeTable.OwnCard(performance.id(), performance.startNumber(),
				Objects.requireNonNull(teams.get(performance.entry())),
				new JudgeTable.OwnCard.Version(card.marks().first(), card.marks().second(), card.sequence(),
						card.receivedAt()),
				!performance.takesCards());
	}

}
