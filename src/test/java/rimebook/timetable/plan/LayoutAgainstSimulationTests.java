package rimebook.timetable.plan;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Random days laid out, and the same days lived through second by second by somebody who
 * knows nothing of blocks: a queue of things to do, a clock that ticks, a counter of worn
 * ice.
 */
class LayoutAgainstSimulationTests {

	@RepeatedTest(40)
	void everyTeamSkatesWhenTheSimulationSaysSo(RepetitionInfo repetition) {
		Random random = new Random(repetition.getCurrentRepetition());
		PlanRules rules = new PlanRules(
				new PlanRules.TeamTime(random.nextBoolean() ? PlanRules.WarmUp.TEAM : PlanRules.WarmUp.NONE,
						random.nextInt(90), random.nextInt(90), random.nextInt(60), random.nextInt(200), 0),
				new PlanRules.IceCare(1200 + random.nextInt(3600), 300 + random.nextInt(900), random.nextInt(4) > 0),
				PlanRules.USUAL.care());
		List<Programme.Segment> segments = new ArrayList<>();
		List<Block> blocks = new ArrayList<>();
		for (int at = 0; at < 6; at++) {
			Block.Timing timing = new Block.Timing(
					(random.nextInt(4) == 0) ? LocalTime.of(9 + 2 * at, random.nextInt(60)) : null,
					random.nextInt(3) * 60, false);
			if (random.nextBoolean()) {
				String name = "S" + at;
				segments.add(Days.segment(name, "E" + at, 120 + random.nextInt(200), 1 + random.nextInt(12)));
				Block whole = Days.skated(name);
				blocks.add(new Block(whole.id(), whole.place(), whole.kind(), "", 0, timing, whole.part()));
			}
			else {
				Block.Kind kind = Block.Kind.values()[random.nextInt(3) + ((random.nextBoolean()) ? 4 : 0)];
				blocks.add(new Block(Days.id("B" + at), Days.MAIN, kind, "B" + at, 60 * (1 + random.nextInt(60)),
						timing, null));
			}
		}
		Programme programme = new Programme(Days.ZONE, segments, List.of());
		Laid laid = Layout.of(Days.plan(blocks.toArray(Block[]::new)).by(rules), programme);
		assertThat(told(laid)).isEqualTo(lived(blocks, programme, rules));
	}

	private static List<String> told(Laid laid) {
		List<String> all = new ArrayList<>();
		laid.sheets().get(0).blocks().forEach((block) -> {
			block.teams().forEach((slot) -> all.add(slot.team().name() + " " + slot.begins()));
			all.add(block.block().id() + " over " + block.ends());
		});
		return all;
	}

	/** A thing to do. */
	private record Doing(String whose, int seconds, boolean skating, boolean ironed, LocalTime notBefore, int pause,
			String afterwards) {
	}

	private static List<String> lived(List<Block> blocks, Programme programme, PlanRules rules) {
		List<Doing> queue = new ArrayList<>();
		for (Block block : blocks) {
			List<Doing> doings = new ArrayList<>();
			Programme.Segment segment = programme.byId().get(block.segment());
			if (segment != null) {
				segment.teams()
					.forEach((team) -> doings.add(new Doing(team.name(),
							rules.team().rotation(segment.seconds(), segment.points()), true, false, null, 0, null)));
			}
			else {
				doings.add(new Doing(null, block.seconds(), block.kind() == Block.Kind.PRACTICE,
						block.kind() == Block.Kind.RESURFACING, null, 0, null));
			}
			Doing first = doings.get(0);
			doings.set(0, new Doing(first.whose, first.seconds, first.skating, first.ironed, block.timing().anchor(),
					block.timing().gap(), null));
			Doing last = doings.get(doings.size() - 1);
			doings.set(doings.size() - 1, new Doing(last.whose, last.seconds, last.skating, last.ironed, last.notBefore,
					last.pause, block.id().toString()));
			queue.addAll(doings);
		}
		List<String> lived = new ArrayList<>();
		Instant now = Days.DAY.atTime(9, 0).atZone(Days.ZONE).toInstant();
		int worn = 0;
		for (Doing doing : queue) {
			for (int second = 0; second < doing.pause; second++) {
				now = now.plusSeconds(1);
			}
			while (doing.notBefore != null
					&& now.isBefore(Days.DAY.atTime(doing.notBefore).atZone(Days.ZONE).toInstant())) {
				now = now.plusSeconds(1);
			}
			if (rules.ice().byItself() && doing.skating && worn > 0 && worn + doing.seconds > rules.ice().after()) {
				now = now.plusSeconds(rules.ice().takes());
				worn = 0;
			}
			if (doing.whose != null) {
				lived.add(doing.whose + " " + now);
			}
			for (int second = 0; second < doing.seconds; second++) {
				now = now.plusSeconds(1);
				worn += doing.skating ? 1 : 0;
			}
			worn = doing.ironed ? 0 : worn;
			if (doing.afterwards != null) {
				lived.add(doing.afterwards + " over " + now);
			}
		}
		return lived;
	}

}
