package rimebook.demo;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.rehearsal.PlausibleMarks;
import rimebook.tabulation.CardMarks;

import static rimebook.demo.DemoCrew.ACCOUNTANT;
import static rimebook.demo.DemoCrew.REFEREE;
import static rimebook.demo.DemoCrew.SECRETARY;

/** Asks, corrects a card and protests in the invented competition. */
@Component
@Profile("demo")
class DemoObjections {

	private final SegmentRun run;

	private final Panels panels;

	private final Entries entries;

	private final Protests protests;

	private final Corrections corrections;

	private final DemoRulings rulings;

	DemoObjections(SegmentRun run, Panels panels, Entries entries, Protests protests, Corrections corrections,
			DemoRulings rulings) {
		this.run = run;
		this.panels = panels;
		this.entries = entries;
		this.protests = protests;
		this.corrections = corrections;
		this.rulings = rulings;
	}

	/** Ask the referee about a costume and elements, before the free skating. */
	void ask(EventView junior, EventView senior) {
		this.rulings.ask(junior, senior);
	}

	void correct(SegmentId segment, EventView event) {
		PerformanceView performance = this.run.performances(segment).get(2);
		SeatView seat = this.panels.judges(event.id()).get(3);
		CardMarks typed = PlausibleMarks.of(seat.number(), this.entries.entry(performance.entry()).team().name(),
				event.segments().get(0).name());
		CardMarks meant = new CardMarks(Math.min(600, typed.first() + 30), typed.second());
		CorrectionView proposed = this.corrections
			.propose(new Corrections.ProposeCorrection(MarksAmendment.on(performance.id(), seat.id(), meant),
					"The judge touched the key beside the one meant and said so in writing."), ACCOUNTANT);
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
	}

	void protest(SegmentId segment, EventView event) {
		ProtestView filed = this.protests.file(new Protests.FileProtest(segment,
				new ProtestView.Claim(this.entries.ofEvent(event.id()).get(4).id(),
						ProtestView.ProtestCategory.CALCULATION,
						"We believe that a win over the team before us is missing.", 0),
				"Mira Sund, team manager", null), SECRETARY);
		this.protests.decide(filed.id(), filed.version(), false,
				"All comparisons were gone through by hand with the manager; the wins are as published.", REFEREE);
	}

}
