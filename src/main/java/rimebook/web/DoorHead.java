package rimebook.web;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.pages.DoorAnswers;

/**
 * Reads the head of a request as far as it is plain: one whole GET or HEAD without a body
 * and without anything that could change what it means. All else is left to the server,
 * which reads the same bytes again; so what is in doubt is not plain.
 */
final class DoorHead {

	private static final String END = "\r\n\r\n";

	private static final String VERSION = " HTTP/1.1\r\n";

	/** What changes the meaning of a request, or of its answer. */
	private static final Set<String> NOT_PLAIN = Set.of("transfer-encoding", "content-length", "expect", "upgrade",
			"origin", "forwarded", "range", "te", "trailer", "http2-settings", "authorization");

	private final String text;

	private boolean plain = true;

	private boolean close;

	private @Nullable String host;

	private @Nullable String acceptEncoding;

	private @Nullable String acceptLanguage;

	private @Nullable String ifNoneMatch;

	private DoorHead(String text) {
		this.text = text;
	}

	/** Read it; {@code null} if it is not plain. */
	static @Nullable DoorHead read(byte[] bytes, int count) {
		DoorHead head = new DoorHead(new String(bytes, 0, count, StandardCharsets.ISO_8859_1));
		return head.isWhole() && head.readHeaders() ? head : null;
	}

	/** Tell whether the connection ends with the answer. */
	boolean isClose() {
		return this.close;
	}

	/** What it asks for; {@code null} if it asks in another way than plainly. */
	DoorAnswers.@Nullable Asked asked() {
		int start = this.text.indexOf('/');
		String target = this.text.substring(start, this.text.indexOf(' ', start));
		int mark = target.indexOf('?');
		String path = (mark < 0) ? target : target.substring(0, mark);
		return isPlain(path)
				? new DoorAnswers.Asked(this.text.charAt(0) == 'H', path, (mark < 0) ? "" : target.substring(mark + 1),
						given(this.acceptEncoding), given(this.acceptLanguage), given(this.ifNoneMatch))
				: null;
	}

	private static String given(@Nullable String value) {
		return (value != null) ? value : "";
	}

	/** One head, with nothing behind it. */
	private boolean isWhole() {
		int end = this.text.indexOf(END);
		if (end < 0 || end != this.text.length() - END.length()
				|| !(this.text.startsWith("GET /") || this.text.startsWith("HEAD /"))) {
			return false;
		}
		int space = this.text.indexOf(' ', this.text.indexOf('/'));
		return space > 0 && this.text.startsWith(VERSION, space);
	}

	private static boolean isPlain(String path) {
		for (int i = 0; i < path.length(); i++) {
			char c = path.charAt(i);
			boolean known = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z'
					|| "/-_.~".indexOf(c) >= 0;
			boolean turns = i > 0 && path.charAt(i - 1) == '/' && (c == '/' || c == '.');
			if (!known || turns) {
				return false;
			}
		}
		return true;
	}

	private boolean readHeaders() {
		int from = this.text.indexOf("\r\n") + 2;
		while (this.plain && from < this.text.length() - 2) {
			int end = this.text.indexOf("\r\n", from);
			readHeader(from, end);
			from = end + 2;
		}
		return this.plain && this.host != null;
	}

	private void readHeader(int from, int end) {
		int colon = this.text.indexOf(':', from);
		this.plain = colon > from && colon < end && isName(from, colon) && isValue(colon + 1, end);
		if (this.plain) {
			String name = this.text.substring(from, colon).toLowerCase(Locale.ROOT);
			note(name, this.text.substring(colon + 1, end).strip());
		}
	}

	private boolean isName(int from, int end) {
		for (int i = from; i < end; i++) {
			char c = this.text.charAt(i);
			if (!(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-')) {
				return false;
			}
		}
		return true;
	}

	private boolean isValue(int from, int end) {
		for (int i = from; i < end; i++) {
			char c = this.text.charAt(i);
			if (c < ' ' || c > '~') {
				return false;
			}
		}
		return true;
	}

	private void note(String name, String value) {
		switch (name) {
			case "host" -> this.host = once(this.host, isHost(value) ? value : null);
			case "accept-encoding" -> this.acceptEncoding = once(this.acceptEncoding, value);
			case "accept-language" -> this.acceptLanguage = once(this.acceptLanguage, value);
			case "if-none-match" -> this.ifNoneMatch = once(this.ifNoneMatch, value);
			case "connection" -> connection(value);
			case "x-forwarded-for" -> {
				// What is kept is the same for everybody.
			}
			case "x-forwarded-proto" -> this.plain = value.equals("http");
			default ->
				this.plain = !NOT_PLAIN.contains(name) && !name.startsWith("x-forwarded") && !name.startsWith("if-");
		}
	}

	private void connection(String value) {
		this.close |= value.equalsIgnoreCase("close");
		this.plain = value.equalsIgnoreCase("close") || value.equalsIgnoreCase("keep-alive");
	}

	private @Nullable String once(@Nullable String before, @Nullable String value) {
		this.plain = before == null && value != null;
		return value;
	}

	private static boolean isHost(String value) {
		return !value.isEmpty() && value.chars()
			.allMatch((c) -> c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9'
					|| ".:-[]".indexOf(c) >= 0);
	}

}
