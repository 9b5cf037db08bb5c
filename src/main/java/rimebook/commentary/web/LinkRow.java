package rimebook.commentary.web;

import java.util.Locale;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.LinkStanding;
import rimebook.pages.HouseAddress;
import rimebook.pages.QrCode;

/**
 * A link at the desk.
 *
 * @param address the whole link, {@code null} where it is shown no longer
 * @param drawing the same to scan
 */
record LinkRow(CommentaryLinks.LinkView link, @Nullable String address, @Nullable QrCode drawing) {

	static LinkRow of(CommentaryLinks.LinkView link, HouseAddress house) {
		String token = link.state().token();
		boolean shown = token != null && link.state().standing() == LinkStanding.GOOD;
		String address = shown ? house.commentary(Objects.requireNonNull(token)) : null;
		return new LinkRow(link, address, (address != null) ? QrCode.of(address) : null);
	}

	/** The last part of the keys {@code web.links.state.…}. */
	public String state() {
		return this.link.state().standing().name().toLowerCase(Locale.ROOT);
	}

	/** Tell whether it opens the page. */
	public boolean isGood() {
		return this.link.state().standing() == LinkStanding.GOOD;
	}

}
