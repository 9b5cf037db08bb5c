package rimebook.pages;

import java.io.Serializable;
import java.util.List;

import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * A word of confirmation, shown once on top of the next page.
 *
 * @param key the message key of the sentence
 * @param arguments what fills its places
 */
public record Notice(String key, List<String> arguments) implements Serializable {

	public Notice {
		arguments = List.copyOf(arguments);
	}

	/**
	 * Show the sentence on the page that is redirected to.
	 * @param redirect the redirect's attributes
	 * @param key the message key, such as {@code accounts.people.added}
	 * @param arguments what fills the places {0}, {1} of the message
	 */
	public static void give(RedirectAttributes redirect, String key, String... arguments) {
		redirect.addFlashAttribute("notice", new Notice(key, List.of(arguments)));
	}

}
