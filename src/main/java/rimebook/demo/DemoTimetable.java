package rimebook.demo;

import java.time.LocalTime;
import java.util.List;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.timetable.BlockDraft;
import rimebook.timetable.PlanView;
import rimebook.timetable.SheetDraft;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Plan;

/** A timetable that was published, and changed once since. */
@Component
@Profile("demo")
class DemoTimetable {

	private final Timetables timetables;

	private final TimetableVersions versions;

	DemoTimetable(Timetables timetables, TimetableVersions versions) {
		this.timetables = timetables;
		this.versions = versions;
	}

	void publish(CompetitionId competition) {
		PlanView first = this.timetables.fill(competition, 0, DemoCrew.SECRETARY);
		Plan.Place day = first.plan().sheets().get(0).place();
		PlanView side = this.timetables.set(competition, first.number(),
				new SheetDraft(day.day(), "Practice rink", LocalTime.of(8, 0), LocalTime.of(18, 0), List.of()),
				DemoCrew.SECRETARY);
		Plan.Place practice = new Plan.Place(day.day(), 1);
		PlanView whole = this.timetables.add(competition, side.number(), new BlockDraft(practice, Block.Kind.PRACTICE,
				"", 480, Block.Timing.NEXT, Block.Part.all(first.programme().segments().get(0).id())), 0,
				DemoCrew.SECRETARY);
		this.versions.publish(competition, whole.number(), "", DemoCrew.SECRETARY);
		PlanView later = this.timetables.add(competition, whole.number(),
				new BlockDraft(day, Block.Kind.BREAK, "Welcome of the teams", 900, Block.Timing.NEXT, null), 2,
				DemoCrew.REFEREE);
		this.versions.publish(competition, later.number(), "The ferry comes a quarter of an hour later.",
				DemoCrew.REFEREE);
	}

}
