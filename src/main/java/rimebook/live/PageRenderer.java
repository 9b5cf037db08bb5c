package rimebook.live;

import java.io.IOException;
import java.util.Set;
import java.util.function.UnaryOperator;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.IContext;
import org.thymeleaf.context.WebContext;
import org.thymeleaf.web.servlet.JakartaServletWebApplication;

/**
 * Renders public pages, or only the part of them that moves, into bytes that are kept.
 * The part needs nothing of the request that asks for it, and so can be made before
 * anybody does.
 */
@Component
class PageRenderer {

	private static final Set<String> PART = Set.of("#live");

	private final ITemplateEngine engine;

	private final RenditionCache renditions;

	private final LiveSettings settings;

	private final PublicAddress address;

	PageRenderer(ITemplateEngine engine, RenditionCache renditions, LiveSettings settings, PublicAddress address) {
		this.address = address;
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
		String base = request.getContextPath();
		RenditionCache.Part part = new RenditionCache.Part(key.ofPart(), (moment) -> {
			PageModel page = filled(PageModel.of(key.ofPart(), moment, base), filling);
			return render(template, PART, new Context(page.locale(), page.model()));
		});
		Rendition answer = key.part() ? this.renditions.get(part, competition, key.since())
				: this.renditions.get(key, competition, (moment) -> {
					PageModel page = filled(PageModel.of(key, moment, base), filling);
					Rendition made = render(template, Set.of(), webContext(page, request, response));
					this.renditions.shown(part, competition, made);
					return made;
				}, part);
		Answer.with(answer, request, response);
	}

	private PageModel filled(PageModel page, UnaryOperator<PageModel> filling) {
		return filling.apply(page).with("quiet", this.settings.quiet().toMillis()).with("host", this.address.base());
	}

	/**
	 * Links to styles and scripts bear a number of their contents, which the request
	 * knows.
	 */
	private static IContext webContext(PageModel page, HttpServletRequest request, HttpServletResponse response) {
		return new WebContext(JakartaServletWebApplication.buildApplication(request.getServletContext())
			.buildExchange(request, response), page.locale(), page.model());
	}

	private Rendition render(String template, Set<String> part, IContext context) {
		return Rendition.ofPage(withoutMargins(this.engine.process(template, part, context)));
	}

	/**
	 * Leave out what begins a line and lines with nothing on them: of the many that a
	 * template repeats for each mark a twentieth of the compressed bytes is made.
	 */
	static String withoutMargins(String page) {
		StringBuilder lines = new StringBuilder(page.length());
		boolean begun = false;
		for (int i = 0; i < page.length(); i++) {
			char letter = page.charAt(i);
			boolean margin = letter == ' ' || letter == '\t' || letter == '\n';
			if (begun || !margin) {
				lines.append(letter);
			}
			begun = letter != '\n' && (begun || !margin);
		}
		return lines.toString();
	}

}
