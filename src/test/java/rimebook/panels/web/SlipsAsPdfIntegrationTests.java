package rimebook.panels.web;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.pages.HouseAddresses;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class SlipsAsPdfIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Panels panels;

	@Autowired
	private HouseAddresses addresses;

	@LocalServerPort
	private int port;

	@Test
	void everySeatHasItsSlipWithACodeToTypeAndADrawingToScan() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 9);
		day.seatSubstitute();
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		List<SeatView> seats = this.panels.withCard(day.event().id());
		assertThat(seats).hasSize(10);
		try (PDDocument document = slips(day)) {
			String text = words(new PDFTextStripper().getText(document));
			assertThat(document.getNumberOfPages()).isEqualTo(2);
			assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(841f, 843f);
			assertThat(text).contains("Judge9", "Substitutejudge", "Issued", "Anewslipforthisseatvoidsthisone.",
					words(day.competition().name()), address() + "/judge");
			seats.forEach((seat) -> assertThat(text).contains(seat.code(), words(seat.official().name())));
			assertThat(scanned(document)).containsExactlyInAnyOrderElementsOf(
					seats.stream().map((seat) -> address() + "/judge?code=" + seat.code()).toList());
		}
	}

	@Test
	void aNewSlipVoidsTheOneBefore() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		SeatView before = this.panels.judges(day.event().id()).get(0);
		String tablet = join(before.code());
		assertThat(table(tablet)).isEqualTo(200);
		this.panels.issueCode(before.id(), SmallCompetition.REFEREE);
		String after = this.panels.seat(before.id()).code();
		try (PDDocument document = slips(day)) {
			assertThat(new PDFTextStripper().getText(document)).contains(SeatRow.inFours(after))
				.doesNotContain(SeatRow.inFours(before.code()));
		}
		assertThat(table(tablet)).as("the tablet of the old slip").isEqualTo(401);
		assertThat(pair(before.code()).statusCode()).isEqualTo(422);
		assertThat(table(join(after))).isEqualTo(200);
	}

	/** Only digests are kept, and a slip that was used once is at its seat. */
	@Test
	void aCodeIsShownUntilATabletHasJoined() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		SeatView seat = this.panels.judges(day.event().id()).get(0);
		String page = "/desk/panel/" + day.event().id();
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		assertThat(referee.open(page).text()).contains(SeatRow.inFours(seat.code())).doesNotContain("on its slip only");
		join(seat.code());
		Visitor.Page joined = referee.open(page);
		assertThat(joined.text()).contains("on its slip only").doesNotContain(SeatRow.inFours(seat.code()));
		Visitor.Page slips = referee.open(page + "/slips");
		assertThat(slips.document().select(".slip")).hasSize(2);
		assertThat(slips.text()).contains("No slip any more for Judge 1: a code is kept as a digest");
		joined.press("form[action$=" + seat.id() + "/code]");
		assertThat(referee.open(page + "/slips").document().select(".slip")).hasSize(3);
		try (PDDocument document = slips(day)) {
			assertThat(new PDFTextStripper().getText(document)).doesNotContain(SeatRow.inFours(seat.code()));
		}
	}

	@Test
	void theSlipsPageLeadsToTheDocument() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		assertThat(referee.open("/desk/panel/" + day.event().id() + "/slips")
			.document()
			.select("a[href*=slips.pdf]")
			.attr("href")).contains("address=" + address());
	}

	/**
	 * Whoever makes a referee open a link, or sits between, must not lead the tablets.
	 */
	@Test
	void neitherTheHostOfARequestNorALinkDecidesWhereSlipsLead() throws IOException {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String slips = "/desk/panel/" + day.event().id() + "/slips";
		Visitor.Page page = referee.openAs("rink.attacker.example", slips);
		assertThat(page.status()).isEqualTo(200);
		assertThat(page.document().html()).doesNotContain("attacker").contains(address() + "/judge");
		Visitor.Page led = referee.open(slips + "?address=http://attacker.example");
		assertThat(led.text()).contains("This machine has no address 'http://attacker.example' now");
		assertThat(led.document().select(".slip")).isEmpty();
		assertThat(referee.bytes(slips + ".pdf?address=http://attacker.example").statusCode()).isEqualTo(422);
	}

	@Test
	void everyAddressOfThisMachineCanBeChosen() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String slips = "/desk/panel/" + day.event().id() + "/slips";
		Visitor.Page page = referee.open(slips);
		List<String> offered = page.document().select("select[name=address] option").eachText();
		assertThat(offered).isNotEmpty().allMatch((one) -> one.endsWith(":" + this.port));
		for (String address : offered) {
			assertThat(referee.open(slips + "?address=" + address).document().select(".slip").text())
				.contains(address + "/judge");
		}
	}

	/** Whoever has a seat's code can mark in its judge's place. */
	@Test
	void whoeverOnlyLooksOnSeesNoCodes() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(day.event().id(), SmallCompetition.REFEREE);
		String page = "/desk/panel/" + day.event().id();
		Visitor accountant = Crew.visitor(this.context, Role.ACCOUNTANT);
		String seen = accountant.open(page).document().html();
		String known = Crew.visitor(this.context, Role.SECRETARY).open(page).document().html();
		assertThat(this.panels.judges(day.event().id())).hasSize(3).allSatisfy((seat) -> {
			assertThat(seen).contains(seat.official().name()).doesNotContain(SeatRow.inFours(seat.code()), seat.code());
			assertThat(known).contains(SeatRow.inFours(seat.code()));
		});
		assertThat(accountant.open(page + "/slips").status()).isEqualTo(403);
		assertThat(accountant.bytes(page + "/slips.pdf").statusCode()).isEqualTo(403);
	}

	private String address() {
		return this.addresses.all().get(0).base();
	}

	/** Lines break where they must. */
	private static String words(String text) {
		return text.replaceAll("\\s", "");
	}

	private PDDocument slips(SmallCompetition day) throws IOException {
		HttpResponse<byte[]> answer = Crew.visitor(this.context, Role.REFEREE)
			.bytes("/desk/panel/" + day.event().id() + "/slips.pdf");
		assertThat(answer.headers().firstValue("content-type")).hasValue("application/pdf");
		assertThat(answer.headers().firstValue("cache-control")).hasValue("no-store");
		return Loader.loadPDF(answer.body());
	}

	private static List<String> scanned(PDDocument document) throws IOException, NotFoundException {
		List<String> texts = new ArrayList<>();
		PDFRenderer renderer = new PDFRenderer(document);
		for (int page = 0; page < document.getNumberOfPages(); page++) {
			BufferedImage picture = renderer.renderImageWithDPI(page, 200);
			int[] pixels = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
			Result[] codes = new QRCodeMultiReader().decodeMultiple(
					new BinaryBitmap(new HybridBinarizer(
							new RGBLuminanceSource(picture.getWidth(), picture.getHeight(), pixels))),
					Map.of(DecodeHintType.TRY_HARDER, true));
			Arrays.stream(codes).map(Result::getText).forEach(texts::add);
		}
		return texts;
	}

	private String join(String code) {
		return pair(code).body().replaceAll(".*\"token\":\"([^\"]+)\".*", "$1");
	}

	private int table(String token) {
		return new Visitor(this.port).json("GET", "/api/judge/table", "", "Authorization", "Bearer " + token)
			.statusCode();
	}

	private HttpResponse<String> pair(String code) {
		return new Visitor(this.port).json("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}");
	}

}
