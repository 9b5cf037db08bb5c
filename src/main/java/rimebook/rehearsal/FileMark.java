package rimebook.rehearsal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

/**
 * How the word comes into a file while it is written: a table gets a last column with it,
 * an object of JSON a first member. Whoever reads the columns or members they know reads
 * on as before.
 */
abstract class FileMark {

	/** The same in every language, since programs read it. */
	static final String WORD = "rehearsal";

	/** The mark for a type of content; {@code null} where there is none to be made. */
	static @Nullable FileMark of(@Nullable String type) {
		String plain = (type != null) ? type.toLowerCase(Locale.ROOT).replaceAll("[ ;].*", "") : "";
		return switch (plain) {
			case "text/csv" -> new Column();
			case "application/json", "application/problem+json" -> new Member(false);
			case "application/jsonl" -> new Member(true);
			default -> null;
		};
	}

	/** Write a byte, and the word where its place is. */
	abstract void write(int b, OutputStream out) throws IOException;

	/** Nothing more comes; a second time there is nothing to do. */
	abstract void end(OutputStream out) throws IOException;

	private static void put(String text, OutputStream out) throws IOException {
		out.write(text.getBytes(StandardCharsets.UTF_8));
	}

	/** Of each line, also of the heading; a cell in quotes may have lines of its own. */
	private static final class Column extends FileMark {

		private boolean quoted;

		private boolean begun;

		@Override
		void write(int b, OutputStream out) throws IOException {
			if (b == '"') {
				this.quoted = !this.quoted;
			}
			if (!this.quoted && (b == '\r' || b == '\n')) {
				end(out);
			}
			else {
				this.begun = true;
			}
			out.write(b);
		}

		@Override
		void end(OutputStream out) throws IOException {
			if (this.begun) {
				put("," + WORD, out);
				this.begun = false;
			}
		}

	}

	/** Of the outermost object, or of that of each line. A list has no members. */
	private static final class Member extends FileMark {

		private final boolean ofEachLine;

		private Place place = Place.BEFORE;

		Member(boolean ofEachLine) {
			this.ofEachLine = ofEachLine;
		}

		@Override
		void write(int b, OutputStream out) throws IOException {
			boolean space = Character.isWhitespace(b);
			if (this.place == Place.OPEN && !space) {
				put((b != '}') ? "," : "", out);
				this.place = Place.BEHIND;
			}
			out.write(b);
			if (this.place == Place.BEFORE && b == '{') {
				put("\"" + WORD + "\":true", out);
				this.place = Place.OPEN;
			}
			else if (this.place == Place.BEFORE && !space) {
				this.place = Place.BEHIND;
			}
			if (this.ofEachLine && b == '\n') {
				this.place = Place.BEFORE;
			}
		}

		@Override
		void end(OutputStream out) {
			// An object that was begun is ended by whoever writes it.
		}

		private enum Place {

			BEFORE, OPEN, BEHIND

		}

	}

}
