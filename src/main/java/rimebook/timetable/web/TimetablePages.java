package rimebook.timetable.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.Choice;
import rimebook.timetable.MeasuredMarking;
import rimebook.timetable.PlanView;
import rimebook.timetable.TimetableOutdated;
import rimebook.timetable.TimetableVersion;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;

/** Gathers what the pages about the timetable show. */
@Component
class TimetablePages {

	private final Timetables timetables;

	private final TimetableVersions versions;

	private final TimetableOutdated outdated;

	private final MeasuredMarking marking;

	private final Competitions competitions;

	TimetablePages(Timetables timetables, TimetableVersions versions, TimetableOutdated outdated,
			MeasuredMarking marking, Competitions competitions) {
		this.outdated = outdated;
		this.marking = marking;
		this.timetables = timetables;
		this.versions = versions;
		this.competitions = competitions;
	}

	/** The plan as a whole. */
	void plan(CompetitionId id, Model model) {
		CompetitionView competition = competition(id, model);
		PlanView plan = this.timetables.plan(id);
		Optional<TimetableVersion> version = this.versions.latest(id);
		model.addAttribute("plan", plan);
		model.addAttribute("sheets", PlannedSheet.of(plan));
		model.addAttribute("version", version.orElse(null));
		model.addAttribute("differences", this.versions.unpublished(plan));
		model.addAttribute("outdated", this.outdated.since(id).orElse(null));
		model.addAttribute("mayChange", competition.state().isOpenToChange());
	}

	/** The form of a block. */
	void block(CompetitionId id, Model model) {
		competition(id, model);
		PlanView plan = this.timetables.plan(id);
		model.addAttribute("plan", plan);
		model.addAttribute("kinds", List.of(Block.Kind.values()));
		model.addAttribute("sheetChoices", plan.plan()
			.sheets()
			.stream()
			.map((sheet) -> new Choice(SheetKey.of(sheet.place()),
					PlannedSheet.day(sheet.place().day()) + ", " + plan.plan().surface(sheet.place().surface())))
			.toList());
		List<Choice> segments = new ArrayList<>(List.of(new Choice("", "–")));
		plan.programme().segments().forEach((segment) -> segments.add(Choice.of(segment.id(), segment.where())));
		model.addAttribute("segmentChoices", segments);
	}

	/** The form of a surface's day. */
	void ice(CompetitionId id, Model model) {
		competition(id, model);
		model.addAttribute("plan", this.timetables.plan(id));
	}

	/** The form of the rules. */
	void rules(CompetitionId id, Model model) {
		CompetitionView competition = competition(id, model);
		model.addAttribute("plan", this.timetables.plan(id));
		model.addAttribute("measured", this.marking.of(id));
		model.addAttribute("mayChange", competition.state().isOpenToChange());
	}

	/**
	 * What others did since the plan was read that somebody changes. What they send next
	 * is decided on what they see then.
	 */
	void since(CompetitionId id, int seen, Model model) {
		model.addAttribute("since", this.timetables.since(id, seen));
	}

	/** Tell whether a block is still in the plan. */
	boolean has(CompetitionId id, UUID block) {
		return this.timetables.plan(id).plan().block(block).isPresent();
	}

	/** The plan, for what a form begins with. */
	PlanView view(CompetitionId id) {
		return this.timetables.plan(id);
	}

	/** A block, for what its form begins with. */
	Block block(CompetitionId id, UUID block) {
		return this.timetables.block(id, block);
	}

	private CompetitionView competition(CompetitionId id, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		return competition;
	}

}
