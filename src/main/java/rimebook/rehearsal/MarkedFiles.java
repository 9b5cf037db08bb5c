package rimebook.rehearsal;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.web.util.WebUtils;

import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.WriteListener;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;

/**
 * Writes the word into tables and data ({@link FileMark}), and before the name of every
 * file that is to be saved.
 */
class MarkedFiles implements Filter {

	@Override
	public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		if (request instanceof HttpServletRequest asked && response instanceof HttpServletResponse answer
				&& WebUtils.getNativeResponse(response, Marking.class) == null) {
			Marking marking = new Marking(answer);
			chain.doFilter(new Plain(asked), marking);
			if (!asked.isAsyncStarted()) {
				marking.finish();
			}
		}
		else {
			chain.doFilter(request, response);
		}
	}

	/** What the house keeps packed could not be marked; the server packs it later. */
	private static final class Plain extends HttpServletRequestWrapper {

		Plain(HttpServletRequest request) {
			super(request);
		}

		@Override
		public @Nullable String getHeader(String name) {
			return name.equalsIgnoreCase(HttpHeaders.ACCEPT_ENCODING) ? null : super.getHeader(name);
		}

	}

	private static final class Marking extends HttpServletResponseWrapper {

		private @Nullable ServletOutputStream body;

		private @Nullable PrintWriter writer;

		private @Nullable FileMark mark;

		Marking(HttpServletResponse response) {
			super(response);
		}

		/** What is written from now on is of the type that is set by now. */
		@Override
		public ServletOutputStream getOutputStream() throws IOException {
			if (this.body == null) {
				this.mark = FileMark.of(getContentType());
				if (this.mark != null) {
					// It becomes longer than whoever wrote it said.
					setContentLengthLong(-1);
				}
				this.body = (this.mark != null) ? new Body(super.getOutputStream(), this.mark)
						: super.getOutputStream();
			}
			return this.body;
		}

		@Override
		public PrintWriter getWriter() throws IOException {
			if (FileMark.of(getContentType()) == null) {
				return super.getWriter();
			}
			if (this.writer == null) {
				this.writer = new PrintWriter(new OutputStreamWriter(getOutputStream(), StandardCharsets.UTF_8));
			}
			return this.writer;
		}

		/** An error is written anew. */
		@Override
		public void reset() {
			super.reset();
			this.body = null;
			this.writer = null;
		}

		@Override
		public void resetBuffer() {
			super.resetBuffer();
			this.body = null;
			this.writer = null;
		}

		@Override
		public void setHeader(String name, @Nullable String value) {
			super.setHeader(name, named(name, value));
		}

		@Override
		public void addHeader(String name, String value) {
			super.addHeader(name, named(name, value));
		}

		/** A name may be taken back, as it is where a refusal is answered instead. */
		private static @Nullable String named(String header, @Nullable String value) {
			return (value != null && header.equalsIgnoreCase(HttpHeaders.CONTENT_DISPOSITION))
					? value.replaceAll("(filename=\"?|filename\\*=UTF-8'')", "$1" + FileMark.WORD + "-") : value;
		}

		void finish() throws IOException {
			if (this.writer != null) {
				this.writer.flush();
			}
			if (this.body != null && this.mark != null) {
				this.mark.end(super.getOutputStream());
			}
		}

	}

	private static final class Body extends ServletOutputStream {

		private final ServletOutputStream out;

		private final FileMark mark;

		Body(ServletOutputStream out, FileMark mark) {
			this.out = out;
			this.mark = mark;
		}

		@Override
		public void write(int b) throws IOException {
			this.mark.write(b, this.out);
		}

		@Override
		public void flush() throws IOException {
			this.out.flush();
		}

		/** Nothing comes behind it. */
		@Override
		public void close() throws IOException {
			this.mark.end(this.out);
			this.out.close();
		}

		@Override
		public boolean isReady() {
			return this.out.isReady();
		}

		@Override
		public void setWriteListener(WriteListener listener) {
			this.out.setWriteListener(listener);
		}

	}

}
