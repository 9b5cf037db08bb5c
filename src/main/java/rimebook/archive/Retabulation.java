package rimebook.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;
import rimebook.competition.RuleSets;
import rimebook.published.Standing;
import rimebook.results.TabulatedAgain;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.PointsRules;

/**
 * Tabulates every published version once more, and looks whether the newest ones say what
 * the newest cards say and the events what their segments say.
 */
final class Retabulation {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final RuleSets ruleSets = RuleSets.shipped();

	private final Standings.@Nullable Rows cards;

	private final List<String> faults = new ArrayList<>();

	private long places;

	private long unknown;

	private Retabulation(Standings.@Nullable Rows cards) {
		this.cards = cards;
	}

	/**
	 * Tabulate all of them.
	 * @param cards where the cards lie, {@code null} where there are none
	 */
	static Finding of(Standings standings, Standings.@Nullable Rows cards) {
		Retabulation all = new Retabulation(cards);
		standings.events().forEach(all::event);
		return new Finding(all.places, all.unknown, all.faults);
	}

	private void event(Standings.OfEvent event) {
		JudgingMethod method = JudgingMethod.valueOf(Standings.text(event.row(), "method"));
		for (Standings.OfSegment segment : event.segments()) {
			segment.versions()
				.forEach((version) -> check(version, method, (standing) -> segment(event, segment, standing)));
		}
		event.versions().forEach((version) -> check(version, method, (standing) -> event(event, standing)));
		if (method.isPlacement() || method.isPoints()) {
			combined(event);
			Standings.Rows rows = this.cards;
			if (rows != null) {
				event.segments().forEach((segment) -> new CardsAgain(rows, segment).faults(this.faults));
			}
		}
	}

	private void check(Standings.Version version, JudgingMethod method, Again again) {
		if (!method.isPlacement() && !method.isPoints()) {
			this.unknown++;
			return;
		}
		Standing standing = version.standing();
		String words = version.words(standing);
		this.places += standing.rows().size();
		try {
			again.different(standing)
				.forEach((team) -> this.faults
					.add(words + ": what stands beside " + team + " does not follow from the marks."));
		}
		catch (TabulationException ex) {
			this.faults.add(words + ": its marks cannot be tabulated.");
		}
		catch (RuntimeException ex) {
			this.faults.add(words + ": it cannot be tabulated: " + ex.getMessage());
		}
	}

	private List<String> segment(Standings.OfEvent event, Standings.OfSegment segment, Standing standing) {
		SegmentKind kind = SegmentKind.valueOf(Standings.text(segment.row(), "kind"));
		JudgingMethod method = JudgingMethod.valueOf(Standings.text(event.row(), "method"));
		return method.isPoints()
				? TabulatedAgain.points(rules(event), kind, Standings.text(event.row(), "skating_level"), standing)
				: TabulatedAgain.segment(placement(event, method, kind), standing);
	}

	private List<String> event(Standings.OfEvent event, Standing standing) {
		if (JudgingMethod.valueOf(Standings.text(event.row(), "method")).isPoints()) {
			return TabulatedAgain.pointsEvent(rules(event), standing);
		}
		CombinationRules factors = CombinationRules
			.ofFactors(standing.segments().stream().map(Standing.SegmentColumn::factor).toList());
		return TabulatedAgain.event(factors.withDisqualifiedPlaces(policies(event).disqualifiedPlaces()), standing);
	}

	private PointsRules rules(Standings.OfEvent event) {
		return this.ruleSets.ruleSet(Standings.text(event.row(), "rule_set"));
	}

	/** An even panel is a matter of whom to refuse, not of what follows. */
	private static PlacementRules placement(Standings.OfEvent event, JudgingMethod method, SegmentKind kind) {
		JudgingPolicies policies = policies(event);
		return new PlacementRules(method.placement(),
				(kind == SegmentKind.FREE) ? policies.freeSkatingTieBreak() : kind.cardTieBreak(),
				policies.sharedOrdinals(), policies.equalJudgesInFavour(), PlacementRules.EvenPanel.ALLOW,
				policies.zeroMark(), policies.disqualifiedPlaces());
	}

	private static JudgingPolicies policies(Standings.OfEvent event) {
		return JSON.readValue(Standings.text(event.row(), "policies"), JudgingPolicies.class);
	}

	/** The newest standing of the event has the places of the newest of its segments. */
	private void combined(Standings.OfEvent event) {
		if (event.versions().isEmpty()) {
			return;
		}
		Standings.Version version = event.versions().get(event.versions().size() - 1);
		Standing standing = version.standing();
		List<Map<String, @Nullable Integer>> held = event.segments()
			.stream()
			.filter((segment) -> Standings.text(segment.row(), "cancelled").isEmpty())
			.map((segment) -> places(segment.newest()))
			.toList();
		if (held.size() != standing.segments().size()) {
			this.faults.add(version.words(standing) + ": it has other segments than the event.");
			return;
		}
		for (Standing.Row row : standing.rows()) {
			for (int i = 0; i < held.size(); i++) {
				if (!Objects.equals(held.get(i).get(row.entry()), row.segmentPlaces().get(i))) {
					this.faults.add(version.words(standing) + ": " + row.team() + " has another place in segment "
							+ (i + 1) + " than there.");
				}
			}
		}
	}

	/** By entry; in points judging only a place counts, not one that stays empty. */
	private static Map<String, @Nullable Integer> places(@Nullable Standing segment) {
		Map<String, @Nullable Integer> places = new HashMap<>();
		if (segment != null) {
			segment.rows().forEach((row) -> places.put(row.entry(), row.placeTaken()));
		}
		return places;
	}

	/** Tabulates one version. */
	private interface Again {

		/** The teams beside whom something else would stand. */
		List<String> different(Standing standing);

	}

	/**
	 * What was found.
	 *
	 * @param places how many rows were tabulated
	 * @param unknown how many versions are judged in a way that only another module knows
	 * @param faults what does not follow, a sentence each
	 */
	record Finding(long places, long unknown, List<String> faults) {

		Finding {
			faults = List.copyOf(faults);
		}

	}

}
