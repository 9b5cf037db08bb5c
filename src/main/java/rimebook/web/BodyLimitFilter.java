package rimebook.web;

import java.io.IOException;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.server.ResponseStatusException;

/** Refuses bodies that no program of ours sends, whether or not they say their length. */
class BodyLimitFilter extends OncePerRequestFilter {

	/** The largest body in bytes. */
	static final int MOST = 100_000;

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		if (request.getContentLengthLong() > MOST) {
			ProblemWriter.write(Refusal.ofStatus(HttpStatus.CONTENT_TOO_LARGE), request, response);
			return;
		}
		chain.doFilter(new Measured(request), response);
	}

	private static final class Measured extends HttpServletRequestWrapper {

		private Measured(HttpServletRequest request) {
			super(request);
		}

		@Override
		public ServletInputStream getInputStream() throws IOException {
			return new MeasuredStream(super.getInputStream());
		}

	}

	private static final class MeasuredStream extends ServletInputStream {

		private final ServletInputStream body;

		private long read;

		private MeasuredStream(ServletInputStream body) {
			this.body = body;
		}

		@Override
		public int read() throws IOException {
			int next = this.body.read();
			count((next < 0) ? 0 : 1);
			return next;
		}

		@Override
		public int read(byte[] into, int offset, int length) throws IOException {
			int count = this.body.read(into, offset, length);
			count(Math.max(count, 0));
			return count;
		}

		private void count(int more) {
			this.read += more;
			if (this.read > MOST) {
				throw new ResponseStatusException(HttpStatus.CONTENT_TOO_LARGE);
			}
		}

		@Override
		public boolean isFinished() {
			return this.body.isFinished();
		}

		@Override
		public boolean isReady() {
			return this.body.isReady();
		}

		@Override
		public void setReadListener(ReadListener listener) {
			this.body.setReadListener(listener);
		}

	}

}
