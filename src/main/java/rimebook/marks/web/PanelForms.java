package rimebook.marks.web;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.marks.StandView;

/** The forms of the stand about cards that are closed and seats that are not filled. */
@Component
class PanelForms {

	static final String REOPEN = "reopen";

	/** Put them into the page; one that is in the model already stays as it was typed. */
	void into(StandView view, Model model) {
		StandView.Row lastClosed = (view.reopened() == null) ? view.lastClosed() : null;
		model.addAttribute("lastClosed", lastClosed);
		if (!model.containsAttribute(REOPEN)) {
			model.addAttribute(REOPEN, ReopenForm.about(lastClosed));
		}
	}

}
