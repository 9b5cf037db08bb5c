package rimebook.tables;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The text of an uploaded table. */
public final class TableText {

	/** The largest table that is looked at: 1 MiB. */
	public static final int LARGEST = 1024 * 1024;

	private TableText() {
	}

	/**
	 * Read an uploaded file as text, in UTF-8 or, where its first mark says so, in
	 * UTF-16.
	 * @throws RuleViolationException {@code import-too-large}, {@code import-not-utf8}
	 */
	public static String of(byte[] upload) {
		checkSize(upload.length);
		try {
			return encodingOf(upload).newDecoder().decode(ByteBuffer.wrap(upload)).toString();
		}
		catch (CharacterCodingException ex) {
			throw TableFile.refusal("import-not-utf8", Sentence.of("tables.not-utf8"));
		}
	}

	static void checkSize(int size) {
		if (size > LARGEST) {
			throw TableFile.refusal("import-too-large", Sentence.of("tables.too-large"));
		}
	}

	/** UTF-16 where it begins as spreadsheets begin such a file, else UTF-8. */
	private static Charset encodingOf(byte[] upload) {
		boolean wide = upload.length > 1
				&& ((upload[0] == -1 && upload[1] == -2) || (upload[0] == -2 && upload[1] == -1));
		return wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
	}

}
