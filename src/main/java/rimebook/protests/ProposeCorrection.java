package rimebook.protests;

import org.jspecify.annotations.Nullable;

import rimebook.performances.SupposedChange;

/**
 * What one official asks another to approve.
 *
 * @param change what shall stand where, as the official meant it who mistyped it
 * @param reason what went wrong, and who says so
 * @param agreed the officials of the technical panel who agree, by name; empty for what
 * is not theirs
 * @param protest the protest that led to it, {@code null} for none
 */
public record ProposeCorrection(SupposedChange<?> change, String reason, String agreed, @Nullable ProtestId protest) {

	/** Without the technical panel, and without a protest. */
	public ProposeCorrection(SupposedChange<?> change, String reason) {
		this(change, reason, "", null);
	}

}
