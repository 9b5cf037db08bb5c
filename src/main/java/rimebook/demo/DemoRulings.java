package rimebook.demo;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.performances.SegmentRun;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;

/**
 * Invented questions to the referee, so that a ruling is at hand when a team is called.
 */
@Component
@Profile("demo")
class DemoRulings {

	private static final String MANAGER = "Mira Sund, team manager";

	private final Rulings rulings;

	private final SegmentRun run;

	DemoRulings(Rulings rulings, SegmentRun run) {
		this.rulings = rulings;
		this.run = run;
	}

	/** Ask about the teams that skate first in the free skating of both events. */
	void ask(EventView junior, EventView senior) {
		SegmentId juniorFree = junior.segments().get(1).id();
		QuestionView cord = ask(starter(juniorFree, 0), null, QuestionView.RulingTopic.COSTUME,
				"May the lantern cords on the sleeves hang loose?");
		rule(cord, 0, answer(RulingView.Verdict.ALLOWED, "", "They are part of the costume."), "");
		rule(cord, 1,
				answer(RulingView.Verdict.CONDITIONAL, "both ends are sewn on",
						"A cord that cannot come off is part of the costume; one that can is a risk on the ice."),
				"A cord came off in the practice on Friday.");
		QuestionView lift = ask(starter(senior.segments().get(1).id(), 0), senior.segments().get(1).id(),
				QuestionView.RulingTopic.ELEMENT,
				"Is the last picture, one skater held at hip height for a count of four, a lift?");
		rule(lift, 0, answer(RulingView.Verdict.NOT_ALLOWED, "",
				"Held up with sustained elevation it is a lift that is not in the planned elements."), "");
		ask(starter(juniorFree, 1), juniorFree, QuestionView.RulingTopic.PROP,
				"May the captain take off her cap and throw it?");
	}

	private EntryId starter(SegmentId segment, int index) {
		return this.run.performances(segment).get(index).entry();
	}

	private QuestionView ask(EntryId entry, @Nullable SegmentId segment, QuestionView.RulingTopic topic, String text) {
		return this.rulings.ask(new Rulings.AskQuestion(entry, segment, topic, text, MANAGER), DemoCrew.SECRETARY);
	}

	private void rule(QuestionView question, int seen, RulingView.Answer answer, String reason) {
		this.rulings.rule(new Rulings.GiveRuling(question.id(), seen, answer, reason), DemoCrew.REFEREE);
	}

	private static RulingView.Answer answer(RulingView.Verdict verdict, String condition, String grounds) {
		return new RulingView.Answer(verdict, condition, grounds,
				"Rulebook of the Skerry Islands, costume and programme", verdict != RulingView.Verdict.NOT_ALLOWED);
	}

}
