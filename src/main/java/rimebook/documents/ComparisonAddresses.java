package rimebook.documents;

import org.springframework.stereotype.Component;

/** Where whoever holds a sheet can compare it with the data that it was made of. */
@Component
class ComparisonAddresses {

	/** Half of the fingerprint is enough, and keeps the drawing small. */
	private static final int DIGITS = 32;

	private final PaperAddresses houses;

	ComparisonAddresses(PaperAddresses houses) {
		this.houses = houses;
	}

	String of(DocumentRef ref, DocumentContent content) {
		return isOfVersion(content) ? lasting(ref, content) : page(this.houses.now(), ref, content.edition());
	}

	/**
	 * The same for a sheet that is the same whenever it is made: what has no version
	 * leads where the newest version of its event does, and is the path alone before
	 * there is one.
	 */
	String lasting(DocumentRef ref, DocumentContent content) {
		return page(isOfVersion(content) ? this.houses.of(ref.subject(), content.edition().version())
				: this.houses.newest(content.at().event().id()), ref, content.edition());
	}

	private static boolean isOfVersion(DocumentContent content) {
		return content.edition().version() > 0;
	}

	private static String page(String base, DocumentRef ref, DocumentContent.Edition edition) {
		String page = ref.kind().isForTheRefereeAlone() ? "%s/desk/documents/%s/%s/%d/compare/%s"
				: "%s/follow/paper/%s/%s/%d/%s";
		return page.formatted(base, ref.kind().word(), ref.subject(), edition.version(),
				edition.fingerprint().substring(0, DIGITS));
	}

}
