package rimebook.results.web;

import java.util.List;
import java.util.Optional;

import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.WebInvocationPrivilegeEvaluator;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.SegmentId;
import rimebook.results.SegmentResultView;
import rimebook.results.SignatureChecklist;
import rimebook.results.Standings;

/** The check list before the signature, for the page and for its live part. */
@Component
class CheckList {

	private final SignatureChecklist checklist;

	private final Standings standings;

	private final WebInvocationPrivilegeEvaluator doors;

	CheckList(SignatureChecklist checklist, Standings standings, WebInvocationPrivilegeEvaluator doors) {
		this.checklist = checklist;
		this.standings = standings;
		this.doors = doors;
	}

	/**
	 * Lay it out.
	 * @param shown the print of the result that the page around it shows, empty where
	 * that is the result of now
	 * @return a print of all that is shown
	 */
	String into(SegmentId segment, String shown, Authentication person, Model model) {
		List<CheckLine> lines = this.checklist.of(segment).stream().map((one) -> line(one, person)).toList();
		Optional<SegmentResultView> result = this.standings.result(segment);
		String now = result.map(SegmentResultView::print).orElse("");
		boolean older = !shown.isEmpty() && !shown.equals(now);
		int met = (int) lines.stream().filter(CheckLine::isMet).count();
		String print = Integer.toHexString((lines + " " + older).hashCode());
		model.addAttribute("checks", lines);
		model.addAttribute("met", met);
		model.addAttribute("lacking", met < lines.size());
		model.addAttribute("official",
				result.filter((one) -> one.state() == SegmentResultView.SegmentResultState.OFFICIAL).isPresent());
		model.addAttribute("held", lines.stream().anyMatch((line) -> line.condition().holdsBack()));
		model.addAttribute("older", older);
		model.addAttribute("shown", shown.isEmpty() ? now : shown);
		model.addAttribute("print", print);
		return print;
	}

	private CheckLine line(SignatureChecklist.SignatureCondition condition, Authentication person) {
		String path = condition.path().replaceAll("#.*", "");
		return new CheckLine(condition, this.doors.isAllowed("", path, "GET", person));
	}

}
