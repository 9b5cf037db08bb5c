package rimebook.tablets;

import org.springframework.stereotype.Component;

import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceView;
import rimebook.remarks.RemarkReceipts;

/** Says of a performance what a seat that marks it has to know. */
@Component
class TeamsOnIce {

	private final Entries entries;

	private final RemarkReceipts remarks;

	TeamsOnIce(Entries entries, RemarkReceipts remarks) {
		this.entries = entries;
		this.remarks = remarks;
	}

	JudgeTable.Now now(PerformanceView performance, SeatId seat) {
		EntryView entry = this.entries.entry(performance.entry());
		return new JudgeTable.Now(performance.id(), performance.startNumber(), entry.team().name(),
				entry.team().club().name(), this.remarks.toldTo(seat, performance.id()));
	}

}
