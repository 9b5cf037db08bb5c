package rimebook.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

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

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.possible.PossiblePlaces;
import rimebook.tabulation.possible.SegmentUnderWay;
import rimebook.tabulation.possible.StillPossible;

/** What is still possible in a free skating of 24 teams before nine judges. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StillPossibleBench {

	private static final int TEAMS = 24;

	private static final int JUDGES = 9;

	/** Teams still to skate. */
	@Param({ "1", "6" })
	int toSkate;

	/** The judging method. */
	@Param
	PlacementRules.PlacementMethod method = PlacementRules.PlacementMethod.MAJORITY;

	private SegmentUnderWay underWay;

	/** Make the segment. */
	@Setup
	public void prepare() {
		PlausibleEvent event = new PlausibleEvent(TEAMS, JUDGES);
		PlacementRules rules = (this.method == PlacementRules.PlacementMethod.MAJORITY) ? PlacementRules.majority(SegmentKind.FREE)
				: PlacementRules.oneByOne(SegmentKind.FREE);
		List<String> waiting = IntStream.range(TEAMS - this.toSkate, TEAMS).mapToObj(PlausibleEvent::name).toList();
		this.underWay = SegmentUnderWay
			.of(rules, PlacementTabulation.ofCards(rules, event.segment(TEAMS - this.toSkate)), waiting)
			.after(new SegmentUnderWay.EarlierSegments(CombinationRules.ofFactors(50, 100), event.earlierPlaces()));
	}

	/** Look what is still possible. */
	@Benchmark
	public PossiblePlaces stillPossible() {
		return StillPossible.of(this.underWay);
	}

}
