package rimebook.pages;

import org.jspecify.annotations.Nullable;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import org.springframework.util.StringUtils;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;

import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

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
		String field = refusal.field();
		if (field != null && form.getFieldType(field) != null) {
			reject(form, field, refusal);
		}
		else {
			form.addError(
					new ObjectError(form.getObjectName(), codes(form.resolveMessageCodes(refusal.code()), refusal),
							arguments(refusal), words(refusal.sentence())));
		}
	}

	/**
	 * Put a refusal beside a field of the form, whatever the field is called in the
	 * refusal.
	 */
	public static void reject(BindingResult form, String field, RimebookException refusal) {
		form.addError(new FieldError(form.getObjectName(), field, form.getRawFieldValue(field), false,
				codes(form.resolveMessageCodes(refusal.code(), field), refusal), arguments(refusal),
				words(refusal.sentence())));
	}

	private static String[] codes(String[] codes, RimebookException refusal) {
		return (predicate(refusal) != null) ? StringUtils.addStringToArray(codes, "web.form.fault") : codes;
	}

	/**
	 * The field as the page calls it and what is wrong with it, where that is said so.
	 */
	private static Object @Nullable [] arguments(RimebookException refusal) {
		Sentence predicate = predicate(refusal);
		return (predicate == null) ? null
				: new Object[] {
						new DefaultMessageSourceResolvable(new String[] { "field." + refusal.field() },
								words(Sentence.of("shared.field.named", String.valueOf(refusal.field())))),
						words(predicate) };
	}

	private static @Nullable Sentence predicate(RimebookException refusal) {
		return (refusal instanceof RuleViolationException rule) ? rule.predicate() : null;
	}

	/** The page that shows the form again is the answer to this very request. */
	private static String words(Sentence sentence) {
		return sentence.in(LocaleContextHolder.getLocale());
	}

}
