package rimebook.documents;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.audit.Anchor;
import rimebook.pages.QrPicture;
import rimebook.published.Standing;
import rimebook.wording.Sentence;

/**
 * What stands on every sheet, as its template asks for it.
 *
 * @param comparison the address of the page that compares the sheet with the data
 * @param anchor the line of the record that tells of the version, or the last one where
 * there are no versions; {@code null} where the record has none
 */
record DocumentHead(DocumentRef ref, DocumentContent content, String comparison, @Nullable Anchor anchor) {

	private static final int GROUP = 8;

	private static final int GROUPS = 4;

	public String titleKey() {
		return "documents.kind." + this.ref.kind().word();
	}

	/** Where and when the competition is held. */
	public Standing.Venue venue() {
		return this.content.at().venue();
	}

	/** What competition, event and segment are called on it. */
	public DocumentContent.Names names() {
		return this.content.at().names();
	}

	public ZoneId zone() {
		return venue().zone();
	}

	public Sentence rules() {
		return this.content.rules();
	}

	public int version() {
		return this.content.edition().version();
	}

	/** The key of the word for how far it can be trusted to stay. */
	public String trustKey() {
		return "documents.trust." + this.content.edition().standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	public boolean isOfficial() {
		return this.content.edition().standing() == DocumentContent.Trust.OFFICIAL;
	}

	/**
	 * Tell whether each of its sheets is for another team and says all of this itself.
	 */
	public boolean isForEachTeam() {
		return this.ref.kind() == DocumentKind.CERTIFICATES;
	}

	/** Since when it has been so, UTC. */
	public Instant since() {
		return this.content.edition().since();
	}

	/** The first half of the fingerprint in groups that can be compared by eye. */
	public String shortFingerprint() {
		String digits = this.content.edition().fingerprint();
		StringBuilder groups = new StringBuilder();
		for (int group = 0; group < GROUPS; group++) {
			groups.append((group > 0) ? " " : "").append(digits, group * GROUP, (group + 1) * GROUP);
		}
		return groups.toString();
	}

	/**
	 * The line of the record in the form in which whoever types it from the sheet can
	 * have it compared; half of the digest is enough.
	 */
	public @Nullable String recordLine() {
		return (this.anchor == null) ? null
				: this.anchor.line() + " " + this.anchor.digest().substring(0, GROUP * GROUPS);
	}

	/** The address as a drawing to scan. */
	public String picture() {
		return QrPicture.of(this.comparison);
	}

}
