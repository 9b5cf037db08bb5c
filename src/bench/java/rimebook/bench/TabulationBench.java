package rimebook.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.SegmentStanding;

/** A whole event of two segments before nine judges, with the sentence of every place. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TabulationBench {

	private static final int JUDGES = 9;

	/** Teams of the event. */
	@Param({ "30", "60", "120", "200" })
	int teams;

	/** The judging method. */
	@Param
	PlacementRules.PlacementMethod method = PlacementRules.PlacementMethod.MAJORITY;

	private final List<List<EntryCards>> segments = new ArrayList<>();

	/** Make the cards. */
	@Setup
	public void prepare() {
		PlausibleEvent event = new PlausibleEvent(this.teams, JUDGES);
		this.segments.clear();
		this.segments.add(event.segment(this.teams));
		this.segments.add(event.segment(this.teams));
	}

	/** Tabulate and explain everything. */
	@Benchmark
	public void wholeEvent(Blackhole hole) {
		Map<String, List<@Nullable Integer>> places = new HashMap<>();
		for (int i = 0; i < this.segments.size(); i++) {
			for (PlacedEntry row : standing(i).rows()) {
				places.computeIfAbsent(row.entry(), (entry) -> new ArrayList<>()).add(row.place());
				hole.consume(row.why());
			}
		}
		List<EntryPlaces> entries = new ArrayList<>();
		places.forEach((entry, own) -> entries.add(new EntryPlaces(entry, EntryStatus.SKATED, own)));
		Combination.combine(CombinationRules.ofFactors(50, 100), entries)
			.rows()
			.forEach((row) -> hole.consume(row.why()));
	}

	private SegmentStanding standing(int segment) {
		SegmentKind kind = (segment == 0) ? SegmentKind.SHORT : SegmentKind.FREE;
		PlacementRules rules = (this.method == PlacementRules.PlacementMethod.MAJORITY) ? PlacementRules.majority(kind)
				: PlacementRules.oneByOne(kind);
		return PlacementTabulation.ofCards(rules, this.segments.get(segment));
	}

}
