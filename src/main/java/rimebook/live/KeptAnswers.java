package rimebook.live;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.pages.ContentPolicy;
import rimebook.pages.DoorAnswers;
import rimebook.shared.NotFoundException;

/**
 * Answers with what is kept. All of it is public, and it was first rendered behind the
 * whole house; the headers that protect a page are those of the rest of the house, a test
 * compares them.
 */
@Component
class KeptAnswers {

	private static final Map<String, String> PROTECTION = Map.of("Content-Security-Policy", ContentPolicy.DIRECTIVES,
			"Permissions-Policy", ContentPolicy.FORBIDDEN_DEVICES, "X-Content-Type-Options", "nosniff",
			"X-Frame-Options", "DENY", "X-XSS-Protection", "0", "Referrer-Policy", "same-origin");

	/** A part is exchanged in a page and is no document of its own. */
	private static final Map<String, String> OF_A_PART = Map.of("Content-Security-Policy", ContentPolicy.DIRECTIVES,
			"X-Content-Type-Options", "nosniff");

	private final RenditionCache renditions;

	private final PollPace pace;

	KeptAnswers(RenditionCache renditions, PollPace pace) {
		this.renditions = renditions;
		this.pace = pace;
	}

	/**
	 * What is kept of what a GET or HEAD asks for, nothing where it has to be made. A
	 * page that polls is told when to come again. To be asked once for each request:
	 * whoever is given nothing here is expected to have it made.
	 */
	Optional<Rendition> kept(HttpServletRequest request, HttpServletResponse response) {
		RenditionKey key = RenditionKey.of(request);
		if (key.isPoll()) {
			this.pace.pace(request, response);
		}
		try {
			return this.renditions.kept(key);
		}
		catch (NotFoundException ex) {
			// Goes wrong again, with a proper answer, further in.
			return Optional.empty();
		}
	}

	void answer(Rendition kept, HttpServletRequest request, HttpServletResponse response) throws IOException {
		protect(request, response);
		Answer.with(kept, request, response);
	}

	private static void protect(HttpServletRequest request, HttpServletResponse response) {
		boolean part = RenditionKey.of(request).part();
		protection(part).forEach(response::setHeader);
		if (request.isSecure()) {
			response.setHeader("Strict-Transport-Security", "max-age=31536000 ; includeSubDomains");
			if (!part) {
				response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
			}
		}
	}

	private static Map<String, String> protection(boolean part) {
		return part ? OF_A_PART : PROTECTION;
	}

	/** The same for what asks at the door, as far as it is at hand. */
	DoorAnswers.@Nullable Told answer(DoorAnswers.Asked asked) {
		RenditionKey key = RenditionKey.of(asked);
		Rendition kept = (key != null) ? this.renditions.atHand(key).orElse(null) : null;
		if (key == null || kept == null) {
			return null;
		}
		return Answer.with(kept, asked, protection(key.part()), key.isPoll() ? this.pace.lines() : "", key.isPoll());
	}

}
