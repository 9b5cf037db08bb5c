package rimebook.web;

import java.io.IOException;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/**
 * Gives links to our files their fingerprints. All other links are left alone: each would
 * be looked for as a file in every library, which takes longer than the rest of the page.
 */
class FileLinks extends ResourceUrlEncodingFilter {

	@Override
	public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		HttpServletResponse plain = (HttpServletResponse) response;
		super.doFilter(request, response, (asked, answer) -> chain.doFilter(asked,
				new Links((HttpServletRequest) asked, (HttpServletResponse) answer, plain)));
	}

	private static final class Links extends HttpServletResponseWrapper {

		private final String root;

		private final HttpServletResponse plain;

		private Links(HttpServletRequest request, HttpServletResponse fingerprinting, HttpServletResponse plain) {
			super(fingerprinting);
			this.root = request.getContextPath();
			this.plain = plain;
		}

		@Override
		public String encodeURL(String link) {
			return isFile(link) ? super.encodeURL(link) : this.plain.encodeURL(link);
		}

		private boolean isFile(String link) {
			return link.startsWith(this.root)
					&& DoorValve.FILES.stream().anyMatch((folder) -> link.startsWith(folder, this.root.length()));
		}

	}

}
