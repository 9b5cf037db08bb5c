package rimebook.timetable.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Gives every block and every team of a plan its time. A pure function: block follows
 * block, an anchored one begins at its time or, if what is before it takes longer, as
 * soon as that is over, which is warned about.
 */
public final class Layout {

	private Layout() {
	}

	/** Lay out a plan with the teams there are. */
	public static Laid of(Plan plan, Programme programme) {
		Map<UUID, Programme.Segment> segments = programme.byId();
		List<Warning> warnings = new ArrayList<>();
		List<Laid.LaidSheet> sheets = plan.sheets()
			.stream()
			.map((sheet) -> new SheetLayout(plan, sheet, programme.zone(), segments, warnings).lay())
			.toList();
		List<Laid.LaidBlock> blocks = sheets.stream().flatMap((sheet) -> sheet.blocks().stream()).toList();
		warnings.addAll(new Clashes(plan, programme, blocks).warnings());
		warnings.addAll(Coverage.of(blocks, programme));
		warnings.sort((one, other) -> one.at().compareTo(other.at()));
		return new Laid(sheets, warnings);
	}

}
