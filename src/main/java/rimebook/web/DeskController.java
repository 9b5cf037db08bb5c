package rimebook.web;

import java.util.Comparator;
import java.util.List;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.WebInvocationPrivilegeEvaluator;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.pages.DeskEntry;
import rimebook.shared.Actor;

/**
 * The first page after signing in: what waits for this person, what waits for others, and
 * the doors that are open to them.
 */
@Controller
class DeskController {

	private final List<DeskEntry> entries;

	private final WaitingWork work;

	private final WebInvocationPrivilegeEvaluator doors;

	DeskController(ObjectProvider<DeskEntry> entries, WaitingWork work, WebInvocationPrivilegeEvaluator doors) {
		this.work = work;
		this.entries = entries.stream().sorted(Comparator.comparingInt(DeskEntry::order)).toList();
		this.doors = doors;
	}

	@GetMapping("/desk")
	String desk(Authentication signedIn, Actor viewer, Model model) {
		List<WaitingLine> waiting = this.work.of(signedIn, viewer);
		model.addAttribute("mine", waiting.stream().filter(WaitingLine::mine).toList());
		model.addAttribute("others", waiting.stream().filter((line) -> !line.mine()).toList());
		model.addAttribute("entries", this.entries.stream().filter((entry) -> isOpen(entry, signedIn)).toList());
		return "web/desk";
	}

	private boolean isOpen(DeskEntry entry, Authentication signedIn) {
		return this.doors.isAllowed("", entry.path(), "GET", signedIn);
	}

}
