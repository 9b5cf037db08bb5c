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

/** The first page after signing in: the doors that are open to this person. */
@Controller
class DeskController {

	private final List<DeskEntry> entries;

	private final WebInvocationPrivilegeEvaluator doors;

	DeskController(ObjectProvider<DeskEntry> entries, WebInvocationPrivilegeEvaluator doors) {
		this.entries = entries.stream().sorted(Comparator.comparingInt(DeskEntry::order)).toList();
		this.doors = doors;
	}

	@GetMapping("/desk")
	String desk(Authentication signedIn, Model model) {
		model.addAttribute("entries", this.entries.stream().filter((entry) -> isOpen(entry, signedIn)).toList());
		return "web/desk";
	}

	private boolean isOpen(DeskEntry entry, Authentication signedIn) {
		return this.doors.isAllowed("", entry.path(), "GET", signedIn);
	}

}
