package rimebook.live;

import java.io.IOException;
import java.util.Set;
import java.util.function.UnaryOperator;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.WebContext;
import org.thymeleaf.web.servlet.JakartaServletWebApplication;

/**
 * Renders public pages, or only the part of them that moves, into bytes that are kept.
 */
@Component
class PageRenderer {

	private static final Set<String> PART = Set.of("#live");

	private final ITemplateEngine engine;

	private final RenditionCache renditions;

	private final LiveSettings settings;

	PageRenderer(ITemplateEngine engine, RenditionCache renditions, LiveSettings settings) {
		this.engine = engine;
		this.renditions = renditions;
		this.settings = settings;
	}

	/**
	 * Answer with a page.
	 * @param competition the slug of the competition it shows, {@code null} for the list
	 * @param template the template
	 * @param filling fills the model; asked only when the page has to be made
	 */
	void answer(HttpServletRequest request, HttpServletResponse response, @Nullable String competition, String template,
			UnaryOperator<PageModel> filling) throws IOException {
		RenditionKey key = RenditionKey.of(request);
		Rendition page = this.renditions.get(key, competition,
				(moment) -> render(template, filling.apply(PageModel.of(key, moment, request, response))
					.with("quiet", this.settings.quiet().toMillis())));
		Answer.with(page, request, response);
	}

	private Rendition render(String template, PageModel page) {
		JakartaServletWebApplication application = JakartaServletWebApplication
			.buildApplication(page.request().getServletContext());
		WebContext context = new WebContext(application.buildExchange(page.request(), page.response()),
				page.key().pageLanguage().locale(), page.model());
		String html = page.key().part() ? this.engine.process(template, PART, context)
				: this.engine.process(template, context);
		return Rendition.of("text/html;charset=UTF-8", html);
	}

}
