package rimebook.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springdoc.webmvc.api.OpenApiWebMvcResource;

import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * The description of the public data by OpenAPI 3.1. It takes a moment to make and never
 * changes while the service runs, so it is made when it is first asked for and kept.
 */
@RestController
class OpenApiController {

	private final OpenApiWebMvcResource descriptions;

	private final RenditionCache renditions;

	private @Nullable Rendition made;

	OpenApiController(OpenApiWebMvcResource descriptions, RenditionCache renditions) {
		this.descriptions = descriptions;
		this.renditions = renditions;
	}

	@GetMapping("/api/openapi")
	void description(HttpServletRequest request, HttpServletResponse response) throws IOException {
		Rendition description = this.renditions.get(RenditionKey.of(request), null, (moment) -> once(request));
		Answer.with(description, request, response);
	}

	private synchronized Rendition once(HttpServletRequest request) {
		Rendition kept = this.made;
		if (kept == null) {
			kept = Rendition.of("application/json", make(request));
			this.made = kept;
		}
		return kept;
	}

	private String make(HttpServletRequest request) {
		try {
			return new String(this.descriptions.openapiJson(request, "/springdoc", Locale.ENGLISH),
					StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new IllegalStateException("The description cannot be written", ex);
		}
	}

}
