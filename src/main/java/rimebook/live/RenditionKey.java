package rimebook.live;

import jakarta.servlet.http.HttpServletRequest;

/**
 * What is rendered once: a path, whole or only its moving part, in one language.
 *
 * @param path the path within the application, decoded
 * @param part whether only the part that follows is asked for
 * @param pageLanguage the language
 */
record RenditionKey(String path, boolean part, PageLanguage pageLanguage) {

	static RenditionKey of(HttpServletRequest request) {
		String path = path(request);
		if (path.startsWith("/api/") || isPoll(path)) {
			return new RenditionKey(path, false, PageLanguage.OF_PROGRAMS);
		}
		return new RenditionKey(path, "live".equals(request.getParameter("part")), PageLanguage.of(request));
	}

	/** The part that follows of the same page. */
	RenditionKey ofPart() {
		return this.part ? this : new RenditionKey(this.path, true, this.pageLanguage);
	}

	/** Tell whether it is what pages without a stream ask for every few seconds. */
	boolean isPoll() {
		return isPoll(this.path);
	}

	private static boolean isPoll(String path) {
		return path.startsWith("/follow/") && path.endsWith("/moments");
	}

	/**
	 * Decoded and without parameters of the path, so that one page written in many ways
	 * is kept once.
	 */
	private static String path(HttpServletRequest request) {
		String rest = request.getPathInfo();
		return (rest != null) ? request.getServletPath() + rest : request.getServletPath();
	}

}
