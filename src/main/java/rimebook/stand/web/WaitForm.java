package rimebook.stand.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;
import rimebook.stand.StandView;

/** The waiting of the team on the ice while others skate, as it is typed. */
record WaitForm(@Nullable String performance, @Nullable String version, @Nullable String waitReason) {

	static WaitForm about(StandView.@Nullable Now onIce) {
		return (onIce == null) ? new WaitForm("", "", "") : new WaitForm(onIce.row().performance().id().toString(),
				String.valueOf(onIce.row().performance().version()), "");
	}

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, "Say which team waits.");
	}

	int versionSeen() {
		return Given.read("version", this.version, Integer::valueOf, "Open the stand again, then repeat.");
	}

}
