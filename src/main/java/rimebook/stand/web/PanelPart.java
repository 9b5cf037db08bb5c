package rimebook.stand.web;

import java.util.List;

import rimebook.pages.RinkClock;
import rimebook.performances.PanelChanges;
import rimebook.wording.Sentence;

/** How the panel of the segment differs from the one that was drawn. */
record PanelPart(List<Difference> differences) implements LivePart {

	static PanelPart of(PanelChanges.SegmentPanel panel, RinkClock clock) {
		return new PanelPart(panel.changes()
			.stream()
			.map((change) -> new Difference(change.words(), change.made().by(), clock.time(change.made().at())))
			.toList());
	}

	/** One difference, who decided it and when. */
	record Difference(Sentence words, String by, String at) {
	}

}
