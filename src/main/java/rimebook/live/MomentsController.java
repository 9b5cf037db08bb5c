package rimebook.live;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * Where everything stands, for pages that have no stream: what the signals would say, in
 * one small answer that is kept like the pages.
 */
@RestController
class MomentsController {

	private final RenditionCache renditions;

	MomentsController(RenditionCache renditions) {
		this.renditions = renditions;
	}

	@GetMapping("/follow/{competition}/moments")
	@Answers(value = "Where every segment stands, for those without a stream", body = Moments.class)
	void moments(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		Rendition moments = this.renditions.get(RenditionKey.of(request), competition,
				(moment) -> Rendition.of("application/json", json(moment)));
		Answer.with(moments, request, response);
	}

	private static String json(@Nullable Moment moment) {
		List<Signal> signals = (moment != null) ? moment.all() : List.of();
		return signals.stream().map(Signal::json).collect(Collectors.joining(",", "{\"moments\":[", "]}"));
	}

	/** The form of the answer. */
	record Moments(List<Signal> moments) {
	}

}
