package rimebook.results;

import java.time.Instant;
import java.util.UUID;

/**
 * A published version of a standing; never changed.
 *
 * @param number counts up from 1 within its scope
 * @param note what this version says about itself, such as what was corrected; may be
 * empty
 * @param publishedAt UTC
 * @param fingerprint SHA-256 of the body as stored, in hexadecimal
 */
public record ResultVersion(Scope scope, UUID scopeId, int number, ResultState state, Cause cause, String note,
		Instant publishedAt, String fingerprint, Standing standing) {

	/** The note for where the cause is said beside it, without saying it once more. */
	public String noteBesideCause() {
		String lead = this.cause.lead();
		return this.note.startsWith(lead) ? this.note.substring(lead.length()) : this.note;
	}

}
