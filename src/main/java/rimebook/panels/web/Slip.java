package rimebook.panels.web;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.pages.HouseAddress;
import rimebook.pages.QrCode;
import rimebook.pages.QrPicture;
import rimebook.panels.OfficialView;
import rimebook.panels.SeatView;

/** A judge's seat on paper: the code in large letters and as a drawing to scan. */
record Slip(String seat, String official, String code, QrCode drawing, String link, @Nullable Instant issuedAt) {

	/** The drawing as a picture, for paper. */
	public String picture() {
		return QrPicture.of(this.link);
	}

	static Slip of(SeatView seat, HouseAddress address) {
		String code = Objects.requireNonNull(seat.code(), "code");
		String official = Optional.ofNullable(seat.official()).map(OfficialView::name).orElse("");
		return new Slip(seat.label(), official, SeatRow.inFours(code), QrCode.of(address.join(code)),
				address.join(code), seat.access().codeIssuedAt());
	}

}
