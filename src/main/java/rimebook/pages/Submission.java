package rimebook.pages;

import java.util.Objects;

import org.springframework.validation.BindingResult;

import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;

/**
 * The sending of a form: runs the change and, when a rule or a conflict refuses it, puts
 * the refusal beside the field at fault, so that the same page can be shown again with
 * everything that was typed. For example
 *
 * <pre>
 * if (Submission.refused(form, () -&gt; this.clubs.add(draft, actor))) {
 *     return "entries/club-form";
 * }
 * return "redirect:/desk/entries";
 * </pre>
 *
 * A page that is shown again this way is answered with status 422 by itself.
 */
public final class Submission {

	private Submission() {
	}

	/**
	 * Run the change unless the form already has errors.
	 * @param form the bound form, which receives the refusal
	 * @param change the call of a facade
	 * @return whether the form has errors now, so that the change was not made
	 */
	public static boolean refused(BindingResult form, Runnable change) {
		if (form.hasErrors()) {
			return true;
		}
		try {
			change.run();
		}
		catch (RuleViolationException | ConflictException ex) {
			reject(form, ex);
		}
		return form.hasErrors();
	}

	private static void reject(BindingResult form, RimebookException refusal) {
		String sentence = Objects.requireNonNullElse(refusal.getMessage(), refusal.code());
		String field = refusal.field();
		if (field != null && form.getFieldType(field) != null) {
			form.rejectValue(field, refusal.code(), sentence);
		}
		else {
			form.reject(refusal.code(), sentence);
		}
	}

}
