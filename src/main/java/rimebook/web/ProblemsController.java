package rimebook.web;

import java.util.Locale;
import java.util.regex.Pattern;

import org.springframework.context.MessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** Explains the codes that refused requests carry. */
@Controller
class ProblemsController {

	private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+){0,8}");

	private final MessageSource messages;

	ProblemsController(MessageSource messages) {
		this.messages = messages;
	}

	@GetMapping("/problems/{code}")
	String problem(@PathVariable String code, Locale locale, Model model) {
		if (!CODE.matcher(code).matches()) {
			throw NotFoundException.of("problem", code);
		}
		String general = this.messages.getMessage("web.problem.general", null, locale);
		model.addAttribute("refusal", Refusal.of(HttpStatus.OK, code, Sentence.NONE));
		model.addAttribute("explanation", this.messages.getMessage("problem." + code + ".text", null, general, locale));
		return "web/problem";
	}

}
