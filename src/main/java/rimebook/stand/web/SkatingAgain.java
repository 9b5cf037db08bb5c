package rimebook.stand.web;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.entries.Entries;
import rimebook.pages.Choice;
import rimebook.pages.Given;
import rimebook.pages.RinkClock;
import rimebook.performances.PerformanceId;
import rimebook.performances.Reskates;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/** What the stand shows of re-skates, and of teams that skate out of the drawn order. */
@Component
class SkatingAgain {

	static final String CALL = "callOther";

	static final String WAIT = "wait";

	private final Reskates reskates;

	private final Entries entries;

	SkatingAgain(Reskates reskates, Entries entries) {
		this.reskates = reskates;
		this.entries = entries;
	}

	SetAsidePart part(StandView view, RinkClock rink) {
		return new SetAsidePart(this.reskates.ofSegment(view.segment().id())
			.stream()
			.map((one) -> new SetAsidePart.Skate(one.startNumber(), this.entries.entry(one.entry()).team().name(),
					rink.time(one.calledAt()), one.lines()))
			.toList());
	}

	/** Put the forms into the page; one that was refused stays as it was typed. */
	void into(StandView view, Model model) {
		model.addAttribute("others", (view.now() == null) ? others(view) : List.of());
		form(CALL, CallForm.EMPTY, model);
		form(WAIT, WaitForm.about(view.now()), model);
	}

	private static List<Choice> others(StandView view) {
		return OrderPart.of(view)
			.rows()
			.stream()
			.filter(OrderPart.OrderRow::canCall)
			.map((row) -> Choice.of(row.id(), "No. " + row.turn().number() + ", " + row.team().name()))
			.toList();
	}

	private static void form(String name, Object form, Model model) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	/** The calling of a team out of the drawn order, as it is typed. */
	record CallForm(@Nullable String called, @Nullable String callReason) {

		static final CallForm EMPTY = new CallForm("", "");

		PerformanceId calledGiven() {
			return Given.read("called", this.called, PerformanceId::of, Sentence.of("stand.called-missing"));
		}

	}

	/** The waiting of the team on the ice while others skate, as it is typed. */
	record WaitForm(@Nullable String performance, @Nullable String version, @Nullable String waitReason) {

		static WaitForm about(StandView.@Nullable Now onIce) {
			return (onIce == null) ? new WaitForm("", "", "") : new WaitForm(onIce.row().performance().id().toString(),
					String.valueOf(onIce.row().performance().version()), "");
		}

		PerformanceId performanceGiven() {
			return Given.read("performance", this.performance, PerformanceId::of, Sentence.of("stand.waiting-missing"));
		}

		int versionSeen() {
			return Given.read("version", this.version, Integer::valueOf, Sentence.of("stand.open-again"));
		}

	}

}
