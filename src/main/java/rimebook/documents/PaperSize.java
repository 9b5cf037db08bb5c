package rimebook.documents;

import java.util.Locale;

/** The sheet that a document is laid out for. */
public enum PaperSize {

	/** 210 by 297 mm (ISO 216). */
	A4("A4"),

	/** 8.5 by 11 inches. */
	LETTER("letter");

	private final String css;

	PaperSize(String css) {
		this.css = css;
	}

	String css() {
		return this.css;
	}

	/** Its name in addresses and messages. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

}
