package rimebook.results;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.published.Standing;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Flip;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.TabulationException;
import rimebook.tabulation.possible.PossiblePlaces;
import rimebook.tabulation.possible.PossibleWords;
import rimebook.tabulation.possible.SegmentUnderWay;
import rimebook.tabulation.possible.StillPossible;
import rimebook.wording.Sentence;

/** Looks ahead from a standing of places while teams are still to skate. */
@Component
class LookAhead {

	private static final Log log = LogFactory.getLog(LookAhead.class);

	/** The places that anybody asks about before the last team; before that, who wins. */
	static final int PLACES = 3;

	/** With more teams to skate, what one of them needs says nothing yet. */
	private static final int FEW_TEAMS = 3;

	/** More would make a referee wait for the next standing. */
	private static final int MOST_TEAMS = 40;

	/**
	 * Look ahead.
	 * @param waiting the entries still to skate, in their order
	 * @param whole the event, this segment's standing among its segments
	 */
	Standing.Outlook of(MethodStandings.SegmentFacts facts, List<EntryId> waiting, MethodStandings.EventFacts whole) {
		EventView event = facts.event();
		SegmentView segment = facts.segment();
		TeamNames.Teams teams = TeamNames.of(facts.entries());
		UnaryOperator<String> name = (entry) -> teams.of(entry).team();
		List<String> toSkate = waiting.stream().map(EntryId::toString).toList();
		PlacementRules rules = event.rules(segment.kind());
		List<EntryCards> cards = facts.field().closed().stream().map(SegmentComposer::cards).toList();
		SegmentStanding standing = PlacementTabulation.ofCards(rules, cards);
		List<Sentence> flips = flips(rules, cards, standing, facts.before()).stream()
			.map((flip) -> flip.words(name))
			.toList();
		boolean marked = cards.stream().anyMatch((one) -> one.status() == EntryStatus.SKATED);
		if (toSkate.isEmpty() || !marked || cards.size() + toSkate.size() > MOST_TEAMS) {
			return new Standing.Outlook(List.of(), List.of(), flips);
		}
		return possible(() -> underWay(event, segment, SegmentUnderWay.of(rules, standing, toSkate), whole))
			.map((possible) -> outlook(possible, toSkate, flips, name))
			.orElseGet(() -> new Standing.Outlook(List.of(), List.of(), flips));
	}

	/** Looking ahead never stands in the way of the standing it belongs to. */
	static Optional<PossiblePlaces> possible(Supplier<SegmentUnderWay> underWay) {
		try {
			return Optional.of(StillPossible.of(underWay.get()));
		}
		catch (TabulationException ex) {
			log.warn("What is still possible is left out of a standing", ex);
			return Optional.empty();
		}
	}

	private static Standing.Outlook outlook(PossiblePlaces possible, List<String> toSkate, List<Sentence> flips,
			UnaryOperator<String> name) {
		return new Standing.Outlook(possible.teams().stream().map((team) -> chance(team, name)).toList(),
				needs(possible, toSkate, name), flips);
	}

	/** The places in the event are asked for where it ends with this segment. */
	private static SegmentUnderWay underWay(EventView event, SegmentView segment, SegmentUnderWay alone,
			MethodStandings.EventFacts whole) {
		List<@Nullable Standing> segments = whole.segments();
		List<@Nullable Standing> earlier = segments.subList(0, segment.position() - 1);
		if (earlier.isEmpty() || earlier.contains(null) || !event.isLastSegment(segment.id())) {
			return alone;
		}
		List<EntryPlaces> places = new ArrayList<>(EventComposer.places(earlier, whole.field().statuses(segments)));
		Set<String> known = places.stream().map(EntryPlaces::entry).collect(Collectors.toSet());
		alone.standing()
			.rows()
			.stream()
			.map((row) -> row.entry())
			.filter(known::add)
			.forEach((entry) -> places
				.add(new EntryPlaces(entry, EntryStatus.SKATED, EventComposer.none(earlier.size()))));
		alone.toSkate()
			.stream()
			.filter(known::add)
			.forEach((entry) -> places
				.add(new EntryPlaces(entry, EntryStatus.SKATED, EventComposer.none(earlier.size()))));
		return alone.after(new SegmentUnderWay.EarlierSegments(EventComposer.rules(event), places));
	}

	private static Standing.Outlook.Chance chance(PossiblePlaces.Outlook team, UnaryOperator<String> name) {
		PossiblePlaces.PlaceRange event = team.event();
		return new Standing.Outlook.Chance(team.entry(), name.apply(team.entry()), team.marked(), range(team.segment()),
				(event != null) ? range(event) : null);
	}

	private static Standing.Outlook.Range range(PossiblePlaces.PlaceRange range) {
		return new Standing.Outlook.Range(range.best(), range.worst(), range.isExact());
	}

	private static List<Sentence> needs(PossiblePlaces possible, List<String> toSkate, UnaryOperator<String> name) {
		if (toSkate.size() > FEW_TEAMS) {
			return List.of();
		}
		int places = (toSkate.size() == 1) ? PLACES : 1;
		return toSkate.stream()
			.flatMap((entry) -> IntStream.rangeClosed(1, places).mapToObj((place) -> possible.need(entry, place)))
			.flatMap(Optional::stream)
			.map((need) -> PossibleWords.need(need, possible.isOfEvent(), name))
			.toList();
	}

	/** Only a team that was added explains a flip; after a correction the marks do. */
	private static List<Flip> flips(PlacementRules rules, List<EntryCards> cards, SegmentStanding standing,
			@Nullable Standing before) {
		if (before == null || before.rows().size() + 1 != cards.size()) {
			return List.of();
		}
		Set<String> there = new HashSet<>(before.rows().stream().map(Standing.Row::entry).toList());
		List<EntryCards> earlier = cards.stream().filter((one) -> there.contains(one.entry())).toList();
		return Flip.between(PlacementTabulation.ofCards(rules, earlier), standing);
	}

}
