package rimebook.documents;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.stereotype.Component;

import rimebook.pages.HouseAddresses;

/** Where whoever holds a sheet can compare it with the data that it was made of. */
@Component
@EnableConfigurationProperties(ComparisonAddresses.Settings.class)
class ComparisonAddresses {

	/** Half of the fingerprint is enough, and keeps the drawing small. */
	private static final int DIGITS = 32;

	private final HouseAddresses house;

	private final Settings settings;

	ComparisonAddresses(HouseAddresses house, Settings settings) {
		this.house = house;
		this.settings = settings;
	}

	String of(DocumentRef ref, DocumentContent.Edition edition) {
		return of(this.settings.address().isBlank() ? this.house.chosen("").base() : this.settings.address(), ref,
				edition);
	}

	/**
	 * The same for a sheet that is kept longer than this machine has its address: the
	 * path alone where the public has none.
	 */
	String lasting(DocumentRef ref, DocumentContent.Edition edition) {
		return of(this.settings.address(), ref, edition);
	}

	private static String of(String base, DocumentRef ref, DocumentContent.Edition edition) {
		String page = ref.kind().isForTheRefereeAlone() ? "%s/desk/documents/%s/%s/%d/compare/%s"
				: "%s/follow/paper/%s/%s/%d/%s";
		return page.formatted(base, ref.kind().word(), ref.subject(), edition.version(),
				edition.fingerprint().substring(0, DIGITS));
	}

	/**
	 * What a rink may set for its documents.
	 *
	 * @param address where the public reaches this house, such as
	 * {@code https://results.example}; empty for the address that is on the seat slips
	 */
	@ConfigurationProperties("rimebook.documents")
	record Settings(@DefaultValue("") String address) {
	}

}
