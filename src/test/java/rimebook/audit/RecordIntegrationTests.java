package rimebook.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.testsupport.Races;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.tuple;

/** Lines are never deleted, so each test counts from what it finds. */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:record;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class RecordIntegrationTests {

	private static final int THREADS = 8;

	private static final Actor RUNE = new Actor("Rune Frost", "referee", "10.0.0.2, Firefox");

	@Autowired
	private ApplicationEventPublisher events;

	@Autowired
	private RecordVerification verification;

	@Autowired
	private RecordReading reading;

	@Autowired
	private RecordExport export;

	@Autowired
	private JdbcClient database;

	private final TransactionTemplate transaction;

	@Autowired
	RecordIntegrationTests(PlatformTransactionManager transactions) {
		this.transaction = new TransactionTemplate(transactions);
	}

	@Test
	void theChainSurvivesManyAtOnce() throws Exception {
		long before = this.verification.head().lines();
		List<Callable<Void>> writers = IntStream.range(0, THREADS).mapToObj(this::writer).toList();
		ExecutorService threads = Executors.newFixedThreadPool(THREADS);
		try {
			List<Future<Void>> running = writers.stream().map(threads::submit).toList();
			while (running.stream().anyMatch((writer) -> !writer.isDone())) {
				assertThat(this.verification.verify().isWhole()).isTrue();
			}
			for (Future<Void> writer : running) {
				writer.get();
			}
		}
		finally {
			threads.shutdownNow();
		}
		RecordFinding finding = this.verification.verify();
		assertThat(finding.isWhole()).isTrue();
		assertThat(finding.lines()).isEqualTo(before + THREADS * Races.ROUNDS);
		assertThat(finding.head()).isEqualTo(this.verification.head().digest());
	}

	private Callable<Void> writer(int thread) {
		return () -> {
			for (int change = 0; change < Races.ROUNDS; change++) {
				write(change("thread " + thread + " change " + change));
			}
			return null;
		};
	}

	@Test
	void aLongChainIsFollowedToItsEnd() {
		long before = this.verification.head().lines();
		this.transaction.executeWithoutResult(
				(status) -> IntStream.range(0, 1100).forEach((i) -> this.events.publishEvent(change("line " + i))));
		assertThat(this.verification.verify())
			.isEqualTo(RecordFinding.whole(before + 1100, this.verification.head().digest()));
	}

	@Test
	void whatIsRolledBackLeavesNoLine() {
		RecordVerification.Head before = this.verification.head();
		this.transaction.executeWithoutResult((status) -> {
			this.events.publishEvent(change("taken back"));
			status.setRollbackOnly();
		});
		assertThat(this.verification.head()).isEqualTo(before);
	}

	@Test
	void aChangeAndItsLineAreKeptTogetherOrNotAtAll() {
		RecordVerification.Head before = this.verification.head();
		AuditedChange tooLong = AuditedChange.of(RUNE, "subject".repeat(20), "1", "x.done");
		assertThatExceptionOfType(RuntimeException.class)
			.isThrownBy(() -> this.transaction.executeWithoutResult((status) -> {
				this.database.sql("insert into club (id, version, name, town) values (?, 0, 'Lost Club', 'Nowhere')")
					.param(UUID.randomUUID())
					.update();
				this.events.publishEvent(tooLong);
			}));
		assertThat(this.database.sql("select count(*) from club where name = 'Lost Club'").query(Long.class).single())
			.isZero();
		assertThat(this.verification.head()).isEqualTo(before);
	}

	@Test
	void anEventOutsideATransactionIsRefused() {
		assertThatIllegalStateException().isThrownBy(() -> this.events.publishEvent(change("nowhere")))
			.withMessageContaining("outside a transaction");
	}

	@Test
	void anEventInATransactionThatOnlyReadsIsRefused() {
		TransactionTemplate reader = new TransactionTemplate(this.transaction.getTransactionManager());
		reader.setReadOnly(true);
		assertThatIllegalStateException()
			.isThrownBy(() -> reader.executeWithoutResult((status) -> this.events.publishEvent(change("reader"))));
	}

	@Test
	void everyTextComesBackAsItWasChained() {
		write(AuditedChange.of(RUNE, "entry", "1", "entry.renamed")
			.from("  blanks kept  \n\tand lines ", "Łyżwiarki 🧊 e\u0301 \uD83E half, nul \0")
			.because("'quoted' %_! \\ back"));
		assertThat(this.verification.verify().isWhole()).isTrue();
		RecordLine newest = this.reading.read(RecordReading.Query.of("entry", "", 1)).lines().get(0);
		assertThat(newest.change().before()).isEqualTo("  blanks kept  \n\tand lines ");
		assertThat(newest.change().after()).isEqualTo("Łyżwiarki 🧊 e\u0301 ? half, nul \uFFFD");
	}

	@Test
	void everyLineSaysForEverWhoActed() {
		Actor before = new Actor("person:ice-7", "Rune Frost", "referee", "test");
		Actor renamed = new Actor("person:ice-7", "Rune Thaw", "secretary", "test");
		write(AuditedChange.of(before, "iceberg", "i-1", "iceberg.seen"));
		write(AuditedChange.of(renamed, "iceberg", "i-1", "iceberg.named"));
		assertThat(this.reading.read(RecordReading.Query.of("iceberg", "PERSON:ICE-7", 1)).lines())
			.extracting((record) -> record.who().actor(), (record) -> record.who().actorId(),
					(record) -> record.link().form())
			.containsExactly(tuple("Rune Thaw", "person:ice-7", 2), tuple("Rune Frost", "person:ice-7", 2));
	}

	/** The file alone is enough to follow the chain. */
	@Test
	void theExportHasEveryLineWithAllThatItsDigestCovers() throws IOException {
		write(AuditedChange.of(RUNE, "entry", "e-9", "entry.renamed").from("a\n\"b\"", "Łyżwy").because("why"));
		ByteArrayOutputStream file = new ByteArrayOutputStream();
		this.export.writeJson(RecordSearch.of("", ""), file);
		List<String> lines = file.toString(StandardCharsets.UTF_8).lines().toList();
		assertThat(lines).hasSize((int) this.verification.head().lines());
		String digest = ChainDigest.START;
		for (String line : lines) {
			RecordLine read = read(JsonMapper.builder().build().readTree(line));
			assertThat(read.link().previousDigest()).isEqualTo(digest);
			digest = read.link().digest();
			assertThat(ChainDigest.of(read)).isEqualTo(digest);
		}
		assertThat(digest).isEqualTo(this.verification.head().digest());
		assertThat(lines.get(lines.size() - 1)).contains("\"actorId\":\"name:Rune Frost\"", "\"form\":2");
	}

	private static RecordLine read(JsonNode line) {
		return new RecordLine(
				new RecordLine.Link(line.get("number").asLong(), line.get("form").asInt(),
						line.get("previousDigest").asString(), line.get("digest").asString()),
				Instant.parse(line.get("time").asString()),
				new RecordLine.Who(line.get("actor").asString(), line.get("actorId").asString(),
						line.get("role").asString(), line.get("device").asString()),
				new RecordLine.Thing(line.get("subject").asString(), line.get("subjectId").asString(),
						line.get("evidence").asString()),
				new RecordLine.Change(line.get("action").asString(), line.get("before").asString(),
						line.get("after").asString(), line.get("reason").asString()));
	}

	@Test
	void linesAreFoundByKindAndWords() {
		write(AuditedChange.of(RUNE, "glacier", "g-1", "glacier.moved")
			.from("100 % ice", "melt_water")
			.because("Why!"));
		write(AuditedChange.of(RUNE, "glacier", "g-2", "glacier.calved").to("berg"));
		assertThat(this.reading.subjects()).contains("glacier");
		assertThat(found("glacier", "")).containsExactly("g-2", "g-1");
		assertThat(found("glacier", "BERG")).containsExactly("g-2");
		assertThat(found("", "100 %")).containsExactly("g-1");
		assertThat(found("", "melt_w")).containsExactly("g-1");
		assertThat(found("", "meltxw")).isEmpty();
		assertThat(found("", "why!")).containsExactly("g-1");
		assertThat(found("glacie", "")).isEmpty();
	}

	@Test
	void linesAreFoundByOneThingByPersonByDeviceAndByTime() {
		Actor mira = new Actor("person:moraine-1", "Mira Moraine", "secretary", "10.9.8.7, Tarn browser");
		write(AuditedChange.of(mira, "moraine", "m-1", "moraine.moved"));
		write(AuditedChange.of(mira, "moraine", "m-2", "moraine.moved"));
		write(AuditedChange.of(RUNE, "moraine", "m-2", "moraine.split"));
		assertThat(found(about("moraine", "m-2"))).containsExactly("moraine.split", "moraine.moved");
		assertThat(found(by("mira mor", ""))).containsExactly("moraine.moved", "moraine.moved");
		assertThat(found(by("person:moraine-1", ""))).containsExactly("moraine.moved", "moraine.moved");
		assertThat(found(by("person:moraine", ""))).isEmpty();
		assertThat(found(by("", "tarn"))).hasSize(2);
		assertThat(found(by("", "10.9.8._"))).isEmpty();
		Instant last = this.reading.read(RecordReading.Query.of("moraine", "", 1)).lines().get(0).writtenAt();
		assertThat(found(within("moraine", last, null))).contains("moraine.split");
		assertThat(found(within("moraine", null, last))).doesNotContain("moraine.split");
		assertThat(found(within("moraine", last.plusMillis(1), null))).isEmpty();
		assertThat(found(within("moraine", last, last.plusMillis(1)))).contains("moraine.split");
	}

	private static RecordSearch about(String subject, String id) {
		return new RecordSearch(new RecordSearch.About(subject, id), new RecordSearch.By("", ""),
				new RecordSearch.Span(null, null), "");
	}

	private static RecordSearch by(String person, String device) {
		return new RecordSearch(new RecordSearch.About("", ""), new RecordSearch.By(person, device),
				new RecordSearch.Span(null, null), "moraine");
	}

	private static RecordSearch within(String subject, @Nullable Instant from, @Nullable Instant until) {
		return new RecordSearch(new RecordSearch.About(subject, ""), new RecordSearch.By("", ""),
				new RecordSearch.Span(from, until), "");
	}

	private List<String> found(RecordSearch search) {
		return this.reading.read(new RecordReading.Query(search, 1))
			.lines()
			.stream()
			.map((line) -> line.change().action())
			.toList();
	}

	@Test
	void whatWasFoundCanBeTakenAway() throws IOException {
		this.transaction.executeWithoutResult((status) -> IntStream.range(0, 1001)
			.forEach((i) -> this.events.publishEvent(AuditedChange.of(RUNE, "firn", i, "firn.fell").to("=1+" + i))));
		write(change("between"));
		ByteArrayOutputStream json = new ByteArrayOutputStream();
		this.export.writeJson(RecordSearch.of("firn", ""), json);
		List<String> lines = json.toString(StandardCharsets.UTF_8).lines().toList();
		assertThat(lines).hasSize(1001).allSatisfy((line) -> assertThat(line).contains("\"subject\":\"firn\""));
		assertThat(lines.get(1000)).contains("\"subjectId\":\"1000\"", "\"after\":\"=1+1000\"");
		ByteArrayOutputStream csv = new ByteArrayOutputStream();
		this.export.writeCsv(RecordSearch.of("firn", "=1+77"), csv);
		assertThat(csv.toString(StandardCharsets.UTF_8))
			.startsWith("line,time,who,who_id,role,device,kind,thing,thing_id,action,before,after,why,digest\r\n")
			.contains(",Rune Frost,name:Rune Frost,referee,\"10.0.0.2, Firefox\",firn,77,77,firn.fell,,'=1+77,,")
			.hasLineCount(12);
	}

	@Test
	void pagesFollowOneAnother() {
		this.transaction.executeWithoutResult((status) -> IntStream.rangeClosed(1, 120)
			.forEach((i) -> this.events.publishEvent(AuditedChange.of(RUNE, "paged", i, "paged.done"))));
		List<String> ids = new ArrayList<>();
		for (int page = 1; page <= 3; page++) {
			RecordReading.Page read = this.reading.read(RecordReading.Query.of("paged", "", page));
			assertThat(read.found()).isEqualTo(120);
			assertThat(read.pages()).isEqualTo(3);
			read.lines().forEach((line) -> ids.add(line.thing().subjectId()));
		}
		assertThat(ids).hasSize(120).startsWith("120", "119").endsWith("2", "1");
		assertThat(this.reading.read(RecordReading.Query.of("paged", "", 4)).lines()).isEmpty();
	}

	private List<String> found(String subject, String text) {
		return this.reading.read(RecordReading.Query.of(subject, text, 1))
			.lines()
			.stream()
			.map((record) -> record.thing().subjectId())
			.toList();
	}

	private void write(AuditedChange change) {
		this.transaction.executeWithoutResult((status) -> this.events.publishEvent(change));
	}

	private static AuditedChange change(String after) {
		return AuditedChange.of(RUNE, "test", "1", "test.changed").from("before", after);
	}

}
