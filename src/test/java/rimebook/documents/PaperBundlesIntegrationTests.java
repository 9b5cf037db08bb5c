package rimebook.documents;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNoException;
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

	@TempDir
	private Path directory;

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

	/** A disk that is full after the first document, and one that is full at once. */
	@Test
	void whatCannotBeKeptIsToldInAWordAndNotGivenOut() {
		CompetitionId competition = PaperDay.points(this.context).small.competition().id();
		PaperBundles full = bundles(
				new DataAccessResourceFailureException("write", new IOException("No space left on device")), true);
		UUID first = full.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		assertThat(this.bundles.bundle(first)).satisfies((bundle) -> {
			assertThat(bundle.made()).isEqualTo(1);
			assertThat(bundle.trouble()).isEqualTo(BundleView.Trouble.DISK_FULL);
			assertThat(bundle.isStopped(Instant.now())).isTrue();
		});
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> this.bundles.whole(first));
		PaperBundles broken = bundles(new IllegalStateException("select * from secret"), true);
		UUID second = broken.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		assertThat(this.bundles.bundle(second).trouble()).isEqualTo(BundleView.Trouble.FAILED);
		PaperBundles mute = bundles(new IllegalStateException("gone"), false);
		UUID third = mute.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		assertThat(this.bundles.bundle(third).trouble()).isEqualTo(BundleView.Trouble.NONE);
		assertThat(this.bundles.bundle(third).isStopped(Instant.now().plusSeconds(180))).isTrue();
	}

	/**
	 * Bundles that are made at once and whose second document cannot be kept.
	 * @param tells whether that can be written down
	 */
	private PaperBundles bundles(RuntimeException failure, boolean tells) {
		BundleStore failing = new BundleStore(this.context.getBean(JdbcClient.class)) {

			@Override
			boolean add(UUID id, int number, Documents.Printed printed, Instant now) {
				if (number > 1) {
					throw failure;
				}
				return super.add(id, number, printed, now);
			}

			@Override
			void fail(UUID id, BundleView.Trouble trouble) {
				if (!tells) {
					throw failure;
				}
				super.fail(id, trouble);
			}

		};
		BundleThread atOnce = new BundleThread() {

			@Override
			void run(Runnable work) {
				work.run();
			}

		};
		return new PaperBundles(this.context.getBean(Competitions.class), this.documents, failing, atOnce,
				this.context.getBean(Acts.class));
	}

	@Test
	void theRestIsNotGivenOutWhenAnotherTakesItsPlace() {
		CompetitionId competition = PaperDay.points(this.context).small.competition().id();
		UUID id = this.bundles.ask(competition, PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		await().atMost(Duration.ofMinutes(1)).until(() -> this.bundles.bundle(id).isReady());
		BundleView bundle = this.bundles.whole(id);
		ByteArrayOutputStream file = new ByteArrayOutputStream() {

			@Override
			public synchronized void write(byte[] bytes, int from, int length) {
				super.write(bytes, from, length);
				PaperBundlesIntegrationTests.this.store.begin(UUID.randomUUID(), bundle.order(), Instant.EPOCH);
			}

		};
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.bundles.write(bundle, file));
		Path got = this.directory.resolve("got.zip");
		assertThatNoException().isThrownBy(() -> Files.write(got, file.toByteArray()));
		assertThatExceptionOfType(ZipException.class).isThrownBy(() -> new ZipFile(got.toFile()).close());
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
