package rimebook.stand.web;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.pages.Choice;
import rimebook.pages.RinkClock;
import rimebook.panels.Panels;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.panels.SeatView;
import rimebook.performances.PanelChanges;
import rimebook.performances.SegmentPanel;
import rimebook.stand.StandView;

/** The forms of the stand about cards that are closed and seats that are not filled. */
@Component
class PanelForms {

	static final String REOPEN = "reopen";

	static final String TAKEOVER = "takeover";

	static final String TAKE_BACK = "takeBack";

	static final String ABSENT = "absent";

	private final PanelChanges changes;

	private final SeatGuesses guesses;

	private final SeatTakeoverQuestions questions;

	private final Panels panels;

	PanelForms(PanelChanges changes, SeatGuesses guesses, SeatTakeoverQuestions questions, Panels panels) {
		this.panels = panels;
		this.changes = changes;
		this.guesses = guesses;
		this.questions = questions;
	}

	GuessesPart guesses(StandView view, RinkClock clock) {
		return GuessesPart.of(view.event().id(), this.guesses.recent(), this.questions.ofEvent(view.event().id()),
				clock);
	}

	BoundPart bound(StandView view) {
		return BoundPart.of(view.event().id(), this.panels.conflicts(view.event().id()));
	}

	PanelPart part(StandView view, RinkClock clock) {
		return PanelPart.of(this.changes.ofSegment(view.segment().id()), clock);
	}

	/** Put them into the page; one that is in the model already stays as it was typed. */
	void into(StandView view, Model model) {
		SegmentPanel panel = this.changes.ofSegment(view.segment().id());
		StandView.Row lastClosed = (view.reopened() == null) ? view.lastClosed() : null;
		StandView.Row toClose = toClose(view);
		model.addAttribute("lastClosed", lastClosed);
		model.addAttribute("toClose", toClose);
		model.addAttribute("segmentPanel", panel);
		model.addAttribute("counting", panel.counting().stream().map(PanelForms::choice).toList());
		model.addAttribute("judges", panel.judges().stream().map(PanelForms::choice).toList());
		model.addAttribute("takenBack",
				panel.changes()
					.stream()
					.filter((change) -> change.canTakeBack() || change.byRule())
					.map((change) -> Choice.of(change.seat(), change.words()))
					.toList());
		form(REOPEN, ReopenForm.about(lastClosed), model);
		form(TAKEOVER, TakeoverForm.EMPTY, model);
		form(TAKE_BACK, TakeBackForm.EMPTY, model);
		form(ABSENT, AbsentForm.about(toClose), model);
	}

	private static StandView.@Nullable Row toClose(StandView view) {
		StandView.Now open = (view.reopened() != null) ? view.reopened() : view.now();
		return (open != null) ? open.row() : null;
	}

	private static void form(String name, Object form, Model model) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	private static Choice choice(SeatView seat) {
		return Choice.of(seat.id(), seat.label() + ((seat.official() != null) ? ", " + seat.official().name() : ""));
	}

}
