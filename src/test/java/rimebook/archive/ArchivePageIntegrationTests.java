package rimebook.archive;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;

import javax.sql.DataSource;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionId;
import rimebook.shared.Acts;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.awaitility.Awaitility.await;

@WholeApplication
class ArchivePageIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private DataSource database;

	@TempDir
	private Path directory;

	@Test
	void theCompetitionsPageLeadsToTheArchive() {
		SmallCompetition competition = SmallCompetition.running(this.context, 2, 3);
		String id = competition.competition().id().toString();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		assertThat(secretary.open("/desk/competitions/" + id).document().select("a[href$=/desk/archive/" + id + "]"))
			.hasSize(1);
		Visitor.Page page = secretary.open("/desk/archive/" + id);
		assertThat(page.status()).isEqualTo(200);
		assertThat(page.document().select("main form button")).hasSize(2);
		assertThat(secretary.open("/desk/archive/0199a000-0000-7000-8000-000000000000").status()).isEqualTo(404);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		assertThat(referee.open("/desk/competitions/" + id).document().select("a[href*=/desk/archive/]")).isEmpty();
	}

	/** Asked for, waited for, taken away; both acts stand on the record. */
	@Test
	void theButtonsGiveAWholeFile() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 2, 3);
		String address = "/desk/archive/" + competition.competition().id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page asked = secretary.open(address).press("section[aria-labelledby=open] form");
		assertThat(asked.path()).isEqualTo(address);
		assertThat(asked.document().select("#archives tbody tr")).hasSize(1);
		await().until(() -> !secretary.open(address + "/progress").document().select("#archives form.save").isEmpty());
		assertThat(secretary.open(address + "/progress").document().select("[hx-trigger]")).isEmpty();
		HttpResponse<byte[]> file = secretary.open(address).pressForFile("#archives form.save");
		assertThat(file.headers().firstValue("Content-Disposition").orElseThrow())
			.contains(competition.competition().slug() + "-public.zip");
		Path got = Files.write(this.directory.resolve("got.zip"), file.body());
		assertThat(ArchiveCheck.check(got).faults()).isEmpty();
		assertThat(secretary.open("/desk/record?text=archive").text()).contains("competition archived",
				"competition archive taken", "the public archive");
	}

	@Test
	void aFileThatIsGoneIsAskedForAgain() {
		SmallCompetition competition = SmallCompetition.running(this.context, 2, 3);
		String address = "/desk/archive/" + competition.competition().id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		secretary.open(address).press("section[aria-labelledby=open] form");
		await().until(() -> !secretary.open(address).document().select("#archives form.save").isEmpty());
		Visitor.Page page = secretary.open(address);
		ArchiveJobs jobs = this.context.getBean(ArchiveJobs.class);
		jobs.of(competition.competition().id()).forEach((job) -> job.failed("There is no room."));
		assertThat(secretary.open(address).text()).contains("There is no room.");
		Visitor.Page gone = page.press("#archives form.save");
		assertThat(gone.path()).isEqualTo(address);
		assertThat(gone.document().select("[role=alert]")).hasSize(1);
	}

	/** It waits for the record, which somebody else writes. */
	@Test
	void isStoppedFromItsPage() {
		SmallCompetition competition = SmallCompetition.running(this.context, 2, 3);
		String address = "/desk/archive/" + competition.competition().id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		this.context.getBean(TransactionTemplate.class).executeWithoutResult((status) -> {
			this.context.getBean(JdbcClient.class).sql("select id from record_head for update").query().listOfRows();
			Visitor.Page page = secretary.open(address).press("section[aria-labelledby=open] form");
			assertThat(page.document().select("#archives button").eachAttr("aria-label"))
				.containsExactly("Stop: Without personal data");
			Visitor.Page stopped = page.press("#archives form");
			assertThat(stopped.path()).isEqualTo(address);
			assertThat(stopped.document().select("#archives form, [hx-trigger]")).isEmpty();
			assertThat(stopped.text()).contains("stopped; there is no file");
		});
		secretary.open(address).press("section[aria-labelledby=open] form");
		await().until(() -> !secretary.open(address).document().select("#archives form.save").isEmpty());
		assertThat(secretary.open(address).document().select("#archives tbody tr")).hasSize(2);
		assertThat(secretary.open(address).text()).contains("stopped; there is no file");
	}

	private ArchiveJobs jobs(ArchivedDocuments documents) {
		StaticListableBeanFactory modules = new StaticListableBeanFactory();
		modules.addBean("sheets", documents);
		Acts acts = this.context.getBean(Acts.class);
		return new ArchiveJobs(new ArchiveMaking(this.database, modules.getBeanProvider(ArchivedDocuments.class), acts,
				this.context.getBean(TransactionTemplate.class)), acts);
	}

	/** With a document of another module, and a line of the record about it. */
	@Test
	void isMadeBesideEverythingElseWithDocumentsOfOtherModules() throws Exception {
		CompetitionId competition = Archives.placement(this.context, 2, 3).competition().id();
		CountDownLatch goOn = new CountDownLatch(1);
		ArchiveJobs jobs = jobs((id, variant) -> List.of(new ArchivedDocument("junior/final-result.txt", () -> {
			await().until(() -> goOn.getCount() == 0);
			return variant.name().getBytes(StandardCharsets.UTF_8);
		})));
		ArchiveJob job = jobs.begin(competition, Variant.WHOLE, SmallCompetition.SECRETARY);
		assertThat(jobs.begin(competition, Variant.WHOLE, SmallCompetition.SECRETARY)).isSameAs(job);
		ArchiveJob next = jobs.begin(competition, Variant.PUBLIC, SmallCompetition.SECRETARY);
		await().until(() -> job.progress().done() > 20);
		assertThat(job.progress().stage()).isEqualTo(ArchiveJob.Stage.MAKING);
		assertThat(next.progress().stage()).isEqualTo(ArchiveJob.Stage.WAITING);
		goOn.countDown();
		await().until(() -> !job.isOpen() && !next.isOpen());
		Path file = this.directory.resolve("got.zip");
		try (var out = Files.newOutputStream(file)) {
			job.send(out);
		}
		assertThat(Files.size(file)).isEqualTo(job.progress().bytes());
		assertThat(ArchiveCheck.check(file).faults()).isEmpty();
		try (ArchiveFile archive = ArchiveFile.open(file)) {
			assertThat(archive.text("documents/junior/final-result.txt")).isEqualTo("WHOLE");
			assertThat(archive.text(ArchiveFile.RECORD)).contains("competition.archived", "with personal data");
		}
		assertThat(jobs.find(competition, job.id())).contains(job);
		assertThat(jobs.find(new CompetitionId(UUID.randomUUID()), job.id())).isEmpty();
		jobs.destroy();
		assertThat(jobs.of(competition)).isEmpty();
	}

	/** Also one that had only to be given its name. */
	@Test
	void whatWasStoppedIsNeverGivenOut() throws Exception {
		CompetitionId competition = Archives.placement(this.context, 2, 3).competition().id();
		List<ArchiveJob> asked = new CopyOnWriteArrayList<>();
		ArchiveJobs jobs = jobs((id, variant) -> List.of(new ArchivedDocument("a.txt", () -> {
			await().until(() -> asked.size() == 2);
			asked.get(0).stop();
			return new byte[0];
		})));
		asked.add(jobs.begin(competition, Variant.WHOLE, SmallCompetition.SECRETARY));
		ArchiveJob waiting = jobs.begin(competition, Variant.PUBLIC, SmallCompetition.SECRETARY);
		waiting.stop();
		asked.add(waiting);
		await().until(() -> asked.stream().noneMatch(ArchiveJob::isOpen));
		jobs.destroy();
		for (ArchiveJob job : asked) {
			job.failed("Something else.");
			job.ready(this.directory.resolve("nowhere"));
			assertThat(job.progress().stage()).isEqualTo(ArchiveJob.Stage.STOPPED);
		}
	}

	@Test
	void saysInASentenceThatTheDiskIsFull() throws Exception {
		CompetitionId competition = Archives.placement(this.context, 2, 3).competition().id();
		ArchiveJobs jobs = jobs((id, variant) -> List.of(new ArchivedDocument("a.txt", () -> {
			throw new IOException("No space left on device");
		})));
		ArchiveJob job = jobs.begin(competition, Variant.WHOLE, SmallCompetition.SECRETARY);
		await().until(() -> !job.isOpen());
		assertThat(job.progress().stage()).isEqualTo(ArchiveJob.Stage.FAILED);
		assertThat(job.progress().failure()).startsWith("There is no room left on the disk");
		jobs.destroy();
	}

	/** Neither waits for what is not finished nor leaves it behind. */
	@Test
	void aServiceThatStopsGivesUp() throws Exception {
		CompetitionId competition = Archives.placement(this.context, 2, 3).competition().id();
		CountDownLatch begun = new CountDownLatch(1);
		CountDownLatch goOn = new CountDownLatch(1);
		ArchiveJobs jobs = jobs((id, variant) -> List.of(new ArchivedDocument("a.txt", () -> {
			begun.countDown();
			await().until(() -> goOn.getCount() == 0);
			return new byte[0];
		})));
		ArchiveJob job = jobs.begin(competition, Variant.WHOLE, SmallCompetition.SECRETARY);
		begun.await();
		Thread stop = new Thread(() -> {
			try {
				jobs.destroy();
			}
			catch (InterruptedException ex) {
				throw new IllegalStateException(ex);
			}
		});
		stop.start();
		await().until(() -> stop.getState() == Thread.State.TIMED_WAITING);
		goOn.countDown();
		stop.join();
		assertThat(job.progress().failure()).contains("was stopped meanwhile");
	}

	@Test
	void aDocumentCannotBeCalledLikeAnythingElse() {
		for (String name : List.of("../x", "/x", "a//b", "A.pdf", "", ".hidden")) {
			assertThatIllegalArgumentException().isThrownBy(() -> new ArchivedDocument(name, () -> new byte[0]));
		}
	}

}
