package rimebook.stand.web;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.SeatId;
import rimebook.performances.AbsentJudges;
import rimebook.performances.PerformanceId;
import rimebook.shared.Required;
import rimebook.stand.StandView;

/** The closing of cards without an absent judge's, as it is typed. */
record AbsentForm(@Nullable String performance, @Nullable String version, @Nullable List<String> absent,
		@Nullable String absentRule, @Nullable String absentReason) {

	static AbsentForm about(StandView.@Nullable Row row) {
		return (row == null) ? new AbsentForm("", "", List.of(), "", "") : new AbsentForm(
				row.performance().id().toString(), String.valueOf(row.performance().version()), List.of(), "", "");
	}

	AbsentJudges.CloseWithout given() {
		PerformanceId about = Given.read("performance", this.performance, PerformanceId::of,
				"Say whose cards are to be closed.");
		int seen = Given.read("version", this.version, Integer::valueOf, "Open the stand again, then repeat.");
		return new AbsentJudges.CloseWithout(about, seen, seats(),
				Required.text("absentRule", Given.text(this.absentRule), 120),
				Required.text("absentReason", Given.text(this.absentReason), 500));
	}

	private Set<SeatId> seats() {
		Set<SeatId> seats = new LinkedHashSet<>();
		Objects.requireNonNullElse(this.absent, List.<String>of())
			.forEach((seat) -> seats.add(Given.read("absent", seat, SeatId::of, "Say whose card will not come.")));
		return seats;
	}

	/** Tell whether a seat is ticked. */
	public boolean names(SeatId seat) {
		return this.absent != null && this.absent.contains(seat.toString());
	}

}
