package rimebook.documents;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionId;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.awaitility.Awaitility.await;

@WholeApplication
class PaperBundlesIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Documents documents;

	@Autowired
	private PaperBundles bundles;

	@Autowired
	private BundleStore store;

	@Test
	void everyDocumentThatIsOfferedIsInTheFile() throws IOException {
		PaperDay day = PaperDay.placement(this.context);
		day.sign();
		CompetitionId competition = day.small.competition().id();
		UUID id = this.bundles.ask(competition, PaperSize.LETTER, Locale.FRENCH, SmallCompetition.SECRETARY);
		await().atMost(Duration.ofMinutes(1)).until(() -> this.bundles.bundle(id).isReady());
		List<String> names = new ArrayList<>();
		try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file(id)))) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				names.add(entry.getName());
				assertThat(PrintedText.sheets(zip.readAllBytes())).isPositive();
			}
		}
		List<DocumentRef> offered = this.documents.offered(day.small.event());
		assertThat(names).hasSameSizeAs(offered)
			.doesNotHaveDuplicates()
			.allMatch((name) -> name.startsWith(day.small.event().slug() + "/"))
			.anyMatch((name) -> name.contains("certificates-"));
		assertThat(this.bundles.newest(competition)).map(BundleView::id).contains(id);
	}

	@Test
	void whatIsNotWholeIsNotGivenOutAndMadeAnewOnceNobodyWorksOnIt() {
		CompetitionId competition = PaperDay.points(this.context).small.competition().id();
		UUID left = UUID.randomUUID();
		Instant before = Instant.now().minusSeconds(300);
		this.store.begin(left, new BundleView.Order(competition, PaperSize.A4, Locale.ENGLISH, "Ada Quill", before),
				Instant.EPOCH);
		this.store.count(left, 2, before);
		this.store.add(left, 1, new Documents.Printed("a.pdf", new byte[] { 1 }), before);
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> this.bundles.whole(left))
			.withMessageContaining("not all made yet");
		assertThat(this.bundles.bundle(left).isStopped(Instant.now())).isTrue();
		UUID next = this.bundles.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		assertThat(next).isNotEqualTo(left);
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.bundles.bundle(left));
		assertThat(this.store.add(left, 2, new Documents.Printed("b.pdf", new byte[] { 2 }), Instant.now())).isFalse();
		await().atMost(Duration.ofMinutes(1)).until(() -> this.bundles.bundle(next).isReady());
	}

	@Test
	void whoeverAsksTwiceGetsTheSame() {
		CompetitionId competition = PaperDay.placement(this.context).small.competition().id();
		UUID first = this.bundles.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		assertThat(this.bundles.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.REFEREE))
			.isEqualTo(first);
		await().atMost(Duration.ofMinutes(1)).until(() -> this.bundles.bundle(first).isReady());
	}

	@Test
	void everythingOfAnEventIsBoundIntoOneDocument() throws IOException {
		PaperDay day = PaperDay.points(this.context);
		List<DocumentRef> offered = this.documents.offered(day.small.event());
		byte[] bound = this.documents.printAll(day.small.event(), PaperSize.A4, Locale.forLanguageTag("fi")).bytes();
		int sheets = offered.stream()
			.mapToInt((ref) -> PrintedText
				.sheets(this.documents.print(ref, PaperSize.A4, Locale.forLanguageTag("fi")).bytes()))
			.sum();
		try (PDDocument document = Loader.loadPDF(bound)) {
			assertThat(document.getNumberOfPages()).isEqualTo(sheets);
			List<String> titles = new ArrayList<>();
			for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
				titles.add(item.getTitle());
			}
			assertThat(titles).hasSameSizeAs(offered).first().isEqualTo("Osallistujaluettelo");
			assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Kaikki asiakirjat: Senior");
		}
	}

	private byte[] file(UUID id) throws IOException {
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		this.bundles.write(this.bundles.whole(id), file);
		return file.toByteArray();
	}

}
