package rimebook.letters;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryView;

/**
 * A letter as it would go now.
 *
 * @param told whether there is something to tell: a letter about what is missing is not
 * written to a team that lacks nothing, and none with a personal link to a team that does
 * not take part
 * @param link the personal link in it, {@code null} for none
 */
public record Draft(EntryView entry, Addressees.Addressee to, Locale language, Content content, boolean told,
		@Nullable Link link) {

	/** Tell whether it takes a personal link along. */
	public boolean isLinked() {
		return this.link != null;
	}

	/** Where the link stands in what is kept, {@code null} for nowhere. */
	@Nullable Integer linkAt() {
		return (this.link != null) ? this.link.at() : null;
	}

	/** Tell whether it is not written because the team may have no link. */
	public boolean isShutOut() {
		return this.link != null && !this.link.given();
	}

	/** Tell whether it can go by mail. */
	public boolean isMailed() {
		return this.told && this.to.hasMail();
	}

	/** Those that can go by mail. */
	public static List<Draft> mailed(List<Draft> drafts) {
		return drafts.stream().filter(Draft::isMailed).toList();
	}

	/** Those that can be printed. */
	public static List<Draft> printed(List<Draft> drafts) {
		return drafts.stream().filter(Draft::told).toList();
	}

	/**
	 * Names what somebody saw, so that nothing else is sent than what they looked at.
	 * @param sendings how many times letters of the competition were sent before
	 * @param renewed whose link a letter would void
	 */
	static String digest(List<Draft> drafts, int sendings, List<Draft> renewed) {
		try {
			MessageDigest digest = MessageDigest.getInstance("SHA-256");
			add(digest, String.valueOf(sendings));
			drafts.forEach((draft) -> List
				.of(draft.entry().id().toString(), draft.to().name(), draft.to().mail(), draft.language().toString(),
						draft.content().subject(), draft.content().body(), String.valueOf(draft.told()))
				.forEach((text) -> add(digest, text)));
			renewed.forEach((draft) -> add(digest, "renewed " + draft.entry().id()));
			return HexFormat.of().formatHex(digest.digest());
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static void add(MessageDigest digest, String text) {
		byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
		digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
		digest.update(bytes);
	}

	/**
	 * A personal link in a letter.
	 *
	 * @param at where in the body it stands
	 * @param given whether the team may have one: it takes part
	 */
	public record Link(int at, boolean given) {
	}

	/**
	 * What a letter says.
	 *
	 * @param subject one line
	 * @param body lines of plain text
	 */
	public record Content(String subject, String body) {

		/** What is left of a letter that was emptied. */
		static final Content EMPTY = new Content("", "");

		/** The body as paragraphs of lines; blank lines lie between paragraphs. */
		public List<List<String>> paragraphs() {
			return List.of(this.body.strip().split("\\n\\s*\\n"))
				.stream()
				.map((paragraph) -> paragraph.lines().toList())
				.toList();
		}

	}

}
