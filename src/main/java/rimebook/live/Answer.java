package rimebook.live;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;

import rimebook.pages.DoorAnswers;

/**
 * Answers a GET or HEAD with rendered bytes: compressed where the client takes it, and
 * not at all where it has them. Shared caches may keep them for a moment, which is why
 * the addresses a page fetches after a signal differ from moment to moment.
 */
final class Answer {

	static final String CACHING = "public, max-age=1, stale-while-revalidate=10";

	private static final byte[] NOTHING = {};

	private static final Pattern REFUSED = Pattern.compile("gzip *; *q *= *0(\\.0*)? *(,|$)");

	private Answer() {
	}

	static void with(Rendition rendition, HttpServletRequest request, HttpServletResponse response) throws IOException {
		boolean compressed = takesGzip(request.getHeader("Accept-Encoding"));
		boolean unchanged = isKnown(rendition, request.getHeader("If-None-Match"));
		headers(rendition, compressed, unchanged).forEach(response::setHeader);
		if (unchanged) {
			response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
			return;
		}
		byte[] bytes = rendition.bytes(compressed);
		response.setContentType(rendition.contentType());
		response.setContentLength(bytes.length);
		if (!request.getMethod().equals("HEAD")) {
			response.getOutputStream().write(bytes);
		}
	}

	/**
	 * The same as bytes.
	 * @param protection the headers that the house gives to all of its answers
	 * @param more lines of the head besides
	 * @param close whether the connection ends with it
	 */
	static DoorAnswers.Told with(Rendition rendition, DoorAnswers.Asked asked, Map<String, String> protection,
			String more, boolean close) {
		boolean compressed = takesGzip(asked.acceptEncoding());
		boolean unchanged = isKnown(rendition, asked.ifNoneMatch().isEmpty() ? null : asked.ifNoneMatch());
		byte[] head = rendition.head(compressed, unchanged, () -> head(rendition, compressed, unchanged, protection));
		return new DoorAnswers.Told(head, more, unchanged ? NOTHING : rendition.bytes(compressed), close);
	}

	private static String head(Rendition rendition, boolean compressed, boolean unchanged,
			Map<String, String> protection) {
		Map<String, String> all = new LinkedHashMap<>(protection);
		all.putAll(headers(rendition, compressed, unchanged));
		if (!unchanged) {
			all.put("Content-Type", rendition.contentType());
			all.put("Content-Length", Integer.toString(rendition.bytes(compressed).length));
		}
		return all.entrySet()
			.stream()
			.map((header) -> header.getKey() + ": " + header.getValue() + "\r\n")
			.collect(Collectors.joining("", unchanged ? "HTTP/1.1 304 \r\n" : "HTTP/1.1 200 \r\n", ""));
	}

	private static Map<String, String> headers(Rendition rendition, boolean compressed, boolean unchanged) {
		Map<String, String> headers = new LinkedHashMap<>();
		headers.put("Cache-Control", CACHING);
		headers.put("Vary", "Accept-Encoding, Accept-Language");
		headers.put("ETag", rendition.etag(compressed));
		if (!rendition.isPage()) {
			headers.putAll(OtherSites.READING);
		}
		if (compressed && !unchanged) {
			headers.put("Content-Encoding", "gzip");
		}
		return headers;
	}

	private static boolean isKnown(Rendition rendition, @Nullable String ifNoneMatch) {
		return ifNoneMatch != null && rendition.isNamedIn(ifNoneMatch);
	}

	/** Tell whether a client that says so takes compressed bytes. */
	static boolean takesGzip(@Nullable String acceptEncoding) {
		return acceptEncoding != null && acceptEncoding.contains("gzip")
				&& !(acceptEncoding.contains("=") && REFUSED.matcher(acceptEncoding).find());
	}

}
