package rimebook.live;

import java.io.IOException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;

/**
 * Answers a GET or HEAD with rendered bytes: compressed where the client takes it, and
 * not at all where it has them. Shared caches may keep them for a moment, which is why
 * the addresses a page fetches after a signal differ from moment to moment.
 */
final class Answer {

	static final String CACHING = "public, max-age=1, stale-while-revalidate=10";

	private Answer() {
	}

	static void with(Rendition rendition, HttpServletRequest request, HttpServletResponse response) throws IOException {
		boolean compressed = takesGzip(request.getHeader("Accept-Encoding"));
		response.setHeader("Cache-Control", CACHING);
		response.setHeader("Vary", "Accept-Encoding, Accept-Language");
		response.setHeader("ETag", rendition.etag(compressed));
		String known = request.getHeader("If-None-Match");
		if (known != null && rendition.isNamedIn(known)) {
			response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
			return;
		}
		body(rendition, compressed, request.getMethod().equals("HEAD"), response);
	}

	private static void body(Rendition rendition, boolean compressed, boolean headOnly, HttpServletResponse response)
			throws IOException {
		byte[] bytes = rendition.bytes(compressed);
		response.setContentType(rendition.contentType());
		response.setContentLength(bytes.length);
		if (compressed) {
			response.setHeader("Content-Encoding", "gzip");
		}
		if (!headOnly) {
			response.getOutputStream().write(bytes);
		}
	}

	private static boolean takesGzip(@Nullable String acceptEncoding) {
		return acceptEncoding != null && acceptEncoding.contains("gzip")
				&& !acceptEncoding.replace(" ", "").matches(".*gzip;q=0(\\.0*)?(,.*)?");
	}

}
