package rimebook.live;

import java.io.IOException;
import java.util.Optional;
import java.util.Set;

import jakarta.servlet.ServletException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;

/**
 * Answers what is kept before anything else of the house is asked: no filter, no session,
 * no security context, no controller. It stands behind the door, so a crowd has only so
 * many threads here, too.
 *
 * <p>
 * Written by hand for one figure: of the pages a second that nginx sends as files from
 * the same machine, the way through the framework sent 0.31. The benchmark StandingRate
 * tells what it is.
 */
class KeptValve extends ValveBase {

	private static final Set<String> METHODS = Set.of("GET", "HEAD");

	private final KeptAnswers answers;

	KeptValve(KeptAnswers answers) {
		super(true);
		this.answers = answers;
	}

	@Override
	public void invoke(Request request, Response response) throws IOException, ServletException {
		Optional<Rendition> kept = METHODS.contains(request.getMethod()) ? this.answers.kept(request, response)
				: Optional.empty();
		if (kept.isEmpty()) {
			getNext().invoke(request, response);
			return;
		}
		this.answers.answer(kept.get(), request, response);
	}

}
