package rimebook.timetable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Layout;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Sheet;

/** Tells what one state of a plan has otherwise than the one before it. */
final class PlanSteps {

	/** More than that, as after a first plan, is told as a whole. */
	private static final int MOST = 8;

	private final Plan before;

	private final Plan after;

	private final Programme programme;

	private final List<PlanView.Change> changes = new ArrayList<>();

	private PlanSteps(Plan before, Plan after, Programme programme) {
		this.before = before;
		this.after = after;
		this.programme = programme;
	}

	/** What was changed, not what moved with it. */
	static List<PlanView.Change> between(Plan before, Plan after, Programme programme) {
		return new PlanSteps(before, after, programme).tell();
	}

	private List<PlanView.Change> tell() {
		if (!this.before.rules().equals(this.after.rules())) {
			add(PlanWords.rules(this.before.rules()), PlanWords.rules(this.after.rules()));
		}
		tell(sheets(this.before), sheets(this.after));
		tell(blocks(this.before), blocks(this.after));
		return (this.changes.size() <= MOST) ? List.copyOf(this.changes)
				: List.of(new PlanView.Change(PlanWords.summary(this.before), PlanWords.summary(this.after)));
	}

	private <K> void tell(Map<K, Told> were, Map<K, Told> are) {
		were.forEach((key, was) -> {
			Told now = are.get(key);
			if (now == null || !now.itself().equals(was.itself())) {
				add(was.words(), (now != null) ? now.words() : "");
			}
		});
		are.forEach((key, now) -> {
			if (!were.containsKey(key)) {
				add("", now.words());
			}
		});
	}

	private static Map<Plan.Place, Told> sheets(Plan plan) {
		Map<Plan.Place, Told> all = new LinkedHashMap<>();
		for (Sheet sheet : plan.sheets()) {
			String words = PlanWords.sheet(plan, sheet);
			all.put(sheet.place(), new Told(words, words));
		}
		return all;
	}

	/** A block that stands elsewhere in the order of its sheet is another one, too. */
	private Map<UUID, Told> blocks(Plan plan) {
		Map<UUID, Told> all = new LinkedHashMap<>();
		for (Laid.LaidBlock laid : Layout.of(plan, this.programme).blocks()) {
			Block block = laid.block();
			all.put(block.id(),
					new Told(List.of(block, position(plan, block)), PlanWords.block(plan, laid, this.programme)));
		}
		return all;
	}

	/** Counted among the blocks that both states have. */
	private long position(Plan plan, Block block) {
		return plan.on(block.place())
			.stream()
			.takeWhile((other) -> !other.id().equals(block.id()))
			.filter((other) -> has(this.before, other) && has(this.after, other))
			.count();
	}

	private static boolean has(Plan plan, Block block) {
		return plan.block(block.id()).map(Block::place).filter(block.place()::equals).isPresent();
	}

	private void add(String was, String is) {
		if (!Objects.equals(was, is)) {
			this.changes.add(new PlanView.Change(was, is));
		}
	}

	/**
	 * @param itself what is compared
	 * @param words how it is told
	 */
	private record Told(Object itself, String words) {
	}

}
