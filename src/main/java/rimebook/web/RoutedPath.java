package rimebook.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.RequestPath;

/**
 * The path by which a request finds its controller: decoded segment by segment, without
 * what stands behind a semicolon, as the routes themselves compare it. Whoever compares
 * the address as it was sent is passed by with one percent-encoded letter.
 */
final class RoutedPath {

	private RoutedPath() {
	}

	/** The path as the routes read it, without the place of the application. */
	static String of(HttpServletRequest request) {
		return of(request.getRequestURI(), request);
	}

	/** The same for an address that the request had before it was passed on. */
	static String of(String address, HttpServletRequest request) {
		StringBuilder path = new StringBuilder();
		RequestPath.parse(address, request.getContextPath())
			.pathWithinApplication()
			.elements()
			.forEach((element) -> path.append(word(element)));
		return path.toString();
	}

	private static String word(PathContainer.Element element) {
		return (element instanceof PathContainer.PathSegment segment) ? segment.valueToMatch() : element.value();
	}

	/** Tell whether it is a path for programs, which are answered in their own way. */
	static boolean isOfPrograms(String path) {
		return path.startsWith("/api/");
	}

}
