package rimebook.commentary.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import org.springframework.util.DigestUtils;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.WebContext;
import org.thymeleaf.web.servlet.JakartaServletWebApplication;

import rimebook.live.PageLanguage;
import rimebook.wording.Figures;

/**
 * Writes the commentator's pages in the language that was chosen. The part that moves is
 * the same for everybody who may see as much, so it is made once and kept for a second;
 * nothing of these pages is kept by browsers or anything in between.
 */
@Component
class CommentaryPages {

	private static final Set<String> PART = Set.of("#live");

	private static final Duration KEPT = Duration.ofSeconds(1);

	private final ITemplateEngine engine;

	private final Cache<PartKey, String> parts = Caffeine.newBuilder().maximumSize(100).expireAfterWrite(KEPT).build();

	CommentaryPages(ITemplateEngine engine) {
		this.engine = engine;
	}

	/** Answer with a whole page. */
	void page(HttpServletRequest request, HttpServletResponse response, HttpStatus status, String template,
			Map<String, @Nullable Object> model) throws IOException {
		PageLanguage language = PageLanguage.of(request);
		Map<String, @Nullable Object> all = model(request, language, model);
		all.put("csrf", request.getAttribute(CsrfToken.class.getName()));
		String html = this.engine.process(template,
				new WebContext(JakartaServletWebApplication.buildApplication(request.getServletContext())
					.buildExchange(request, response), language.locale(), all));
		response.setStatus(status.value());
		write(response, html);
	}

	/**
	 * Answer with the part that moves, or that it has not moved.
	 * @param key what makes it another one
	 */
	void part(HttpServletRequest request, HttpServletResponse response, PartKey key,
			Supplier<Map<String, @Nullable Object>> model) throws IOException {
		PageLanguage language = PageLanguage.of(request);
		String html = this.parts.get(key, (absent) -> this.engine.process("commentary/page", PART,
				new Context(language.locale(), model(request, language, model.get()))));
		String tag = "\"" + DigestUtils.md5DigestAsHex(html.getBytes(StandardCharsets.UTF_8)) + "\"";
		response.setHeader(HttpHeaders.ETAG, tag);
		if (tag.equals(request.getHeader(HttpHeaders.IF_NONE_MATCH))) {
			headers(response);
			response.setStatus(HttpStatus.NOT_MODIFIED.value());
			return;
		}
		write(response, html);
	}

	private static Map<String, @Nullable Object> model(HttpServletRequest request, PageLanguage language,
			Map<String, @Nullable Object> model) {
		Map<String, @Nullable Object> all = new HashMap<>(model);
		all.put("words", new Figures(language.locale()));
		all.put("language", language);
		all.put("languages", PageLanguage.SPOKEN);
		all.put("base", request.getContextPath());
		return all;
	}

	private static void write(HttpServletResponse response, String html) throws IOException {
		headers(response);
		byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
		response.setContentType("text/html;charset=UTF-8");
		response.setContentLength(bytes.length);
		response.getOutputStream().write(bytes);
	}

	private static void headers(HttpServletResponse response) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
	}

	/**
	 * What makes a part another one.
	 *
	 * @param page the address of the page without its language
	 * @param moment differs as soon as anything moves that the public is told
	 * @param calls whether the elements are told while they are called
	 */
	record PartKey(String competition, String page, String moment, boolean calls, Locale language, String query) {
	}

}
