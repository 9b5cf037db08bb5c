package rimebook.protests.web;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.SegmentRun;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;

/** Corrections with the names of teams and seats. */
@Component
class CorrectionLines {

	private final Corrections corrections;

	private final SegmentRun run;

	private final Entries entries;

	private final Panels panels;

	CorrectionLines(Corrections corrections, SegmentRun run, Entries entries, Panels panels) {
		this.corrections = corrections;
		this.run = run;
		this.entries = entries;
		this.panels = panels;
	}

	List<ProtestsPage.CorrectionLine> ofSegment(SegmentId segment) {
		return this.corrections.ofSegment(segment).stream().map(this::of).toList();
	}

	ProtestsPage.CorrectionLine of(CorrectionView correction) {
		return new ProtestsPage.CorrectionLine(correction,
				team(this.run.performance(correction.change().performance()).entry()), whose(correction));
	}

	private String whose(CorrectionView correction) {
		SeatId seat = correction.change().seat();
		return (seat != null) ? this.panels.seat(seat).label() : correction.change().amendment().list();
	}

	private String team(EntryId entry) {
		return this.entries.entry(entry).team().name();
	}

}
