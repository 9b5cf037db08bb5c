package rimebook.keying;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

/** The blank cards, read back from the document that is printed. */
@WholeApplication
class BlankCardsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Test
	void everySeatHasASheetWithTheWholeStartingOrder() throws IOException {
		SmallCompetition day = SmallCompetition.running(this.context, 12, 3);
		day.draw(1);
		try (PDDocument document = print(day.segment(1), "")) {
			assertThat(document.getNumberOfPages()).isEqualTo(3);
			assertThat(document.getPage(0).getMediaBox().getWidth()).isBetween(594f, 596f);
			for (int page = 1; page <= 3; page++) {
				SeatView seat = day.seats().get(page - 1);
				assertThat(text(document, page)).contains(day.competition().name(),
						seat.label() + ": Junior, Short programme", seat.official().name(), "Required elements",
						"Presentation", "Signature of " + seat.label(), "Team 1", "Team 12", "The rulebook in force",
						"Two people key it in");
			}
		}
	}

	@Test
	void aLongOrderGoesOnOnTheNextSheetUnderTheNameOfItsSeat() throws IOException {
		SmallCompetition day = SmallCompetition.running(this.context, 30, 3);
		day.draw(1);
		try (PDDocument document = print(day.segment(1), "?seat=2")) {
			assertThat(document.getNumberOfPages()).isEqualTo(2);
			assertThat(text(document, 2)).contains("Team (Judge 2)", "Signature of Judge 2").doesNotContain("Judge 1");
		}
	}

	@Test
	void inPointsJudgingEachTeamHasASheetOfItsOwn() throws IOException {
		SmallCompetition day = PointsCompetition.running(this.context, 2, 3);
		day.open(1);
		try (PDDocument document = print(day.segment(1), "")) {
			assertThat(document.getNumberOfPages()).isEqualTo(6);
			assertThat(text(document, 1)).contains("Judge 1: Senior, Short programme", "Grade", "Composition",
					"Presentation", "Skating Skills", "Signature of Judge 1");
		}
		try (PDDocument document = print(day.segment(1), "?team=2")) {
			assertThat(document.getNumberOfPages()).isEqualTo(3);
		}
	}

	@Test
	void nothingIsPrintedBeforeTheOrderIsDrawn() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		Visitor.Page page = Crew.visitor(this.context, Role.ACCOUNTANT)
			.open("/desk/keying/" + day.segment(1) + "/blank-cards.pdf");
		assertThat(page.status()).isEqualTo(422);
		assertThat(page.text()).contains("not drawn yet");
	}

	private PDDocument print(SegmentId segment, String query) throws IOException {
		HttpResponse<byte[]> answer = Crew.visitor(this.context, Role.REFEREE)
			.bytes("/desk/keying/" + segment + "/blank-cards.pdf" + query);
		assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/pdf");
		return Loader.loadPDF(answer.body());
	}

	private static String text(PDDocument document, int page) {
		try {
			PDFTextStripper stripper = new PDFTextStripper();
			stripper.setStartPage(page);
			stripper.setEndPage(page);
			return stripper.getText(document).replaceAll("\\s+", " ");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
