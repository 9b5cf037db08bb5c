package rimebook.audit;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.SegmentId;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:record;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class RecordAnchorsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordAnchors anchors;

	@Autowired
	private RecordVerification verification;

	@Autowired
	private PlatformTransactionManager transactions;

	@Test
	void everyPublishedVersionHasItsLineWhichStaysTheSame() {
		SmallCompetition day = SmallCompetition.running(this.context, 11, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		List<ResultVersion> versions = this.context.getBean(Standings.class).versions(segment);
		assertThat(versions).hasSizeGreaterThan(10);
		List<Anchor> found = versions.stream().map(this::anchor).toList();
		assertThat(found).extracting(Anchor::line).doesNotHaveDuplicates();
		assertThat(found).allSatisfy((anchor) -> assertThat(anchor.digest()).hasSize(64));
		SmallCompetition.running(this.context, 1, 3);
		assertThat(versions.stream().map(this::anchor).toList()).isEqualTo(found);
	}

	private Anchor anchor(ResultVersion version) {
		return this.anchors.ofVersion(version.scopeId(), version.number(), version.fingerprint()).orElseThrow();
	}

	@Test
	void theHeadIsTheLastLine() {
		SmallCompetition.running(this.context, 1, 3);
		RecordVerification.Head head = this.verification.head();
		assertThat(this.anchors.head()).hasValueSatisfying((anchor) -> {
			assertThat(anchor.line()).isEqualTo(head.lines());
			assertThat(anchor.digest()).isEqualTo(head.digest());
			assertThat(anchor.writtenAt()).isNotNull();
		});
	}

	@Test
	void ofEachPlaceTheAnchorThatItHoldsIsKnown() {
		SmallCompetition.running(this.context, 1, 3);
		Anchor earlier = this.anchors.ofLine(1).orElseThrow();
		Anchor later = this.anchors.ofLine(3).orElseThrow();
		this.anchors.noteKept("Tablet of Judge 3", later);
		assertThat(kept("Tablet of Judge 3")).satisfies((kept) -> {
			assertThat(kept.line()).isEqualTo(3);
			assertThat(kept.digest()).isEqualTo(later.digest());
			assertThat(kept.fits()).isTrue();
		});
		this.anchors.noteKept("Tablet of Judge 3", earlier);
		assertThat(kept("Tablet of Judge 3").line()).as("a new browser, which holds less").isEqualTo(1);
	}

	@Test
	void ofPaperTheNewestAnchorThatFitsIsKnown() {
		SmallCompetition.running(this.context, 1, 3);
		Anchor earlier = this.anchors.ofLine(1).orElseThrow();
		this.anchors.noteKeptForGood("Paper: Junior", new Anchor(700_000, "b".repeat(64), null, "", null));
		assertThat(kept("Paper: Junior").fits()).as("lost with an earlier copy").isFalse();
		this.anchors.noteKeptForGood("Paper: Junior", earlier);
		assertThat(kept("Paper: Junior").line()).isEqualTo(1);
		this.anchors.noteKeptForGood("Paper: Junior", this.anchors.ofLine(3).orElseThrow());
		this.anchors.noteKeptForGood("Paper: Junior", earlier);
		assertThat(kept("Paper: Junior").line()).isEqualTo(3);
	}

	/** Whoever printed a paper has it, whatever comes of the note. */
	@Test
	void whatCannotBeNotedHindersNobody() {
		TransactionTemplate act = new TransactionTemplate(this.transactions);
		act.executeWithoutResult(
				(status) -> this.anchors.noteKept("Nowhere", new Anchor(3, "d".repeat(70), null, "", null)));
		act.setReadOnly(true);
		act.executeWithoutResult((status) -> this.anchors.noteKept("Paper", this.anchors.ofLine(1).orElseThrow()));
		assertThat(this.anchors.kept()).extracting(RecordAnchors.Kept::place)
			.contains("Paper")
			.doesNotContain("Nowhere");
	}

	@Test
	void aPlaceWithALongNameIsNotedAllTheSame() {
		this.anchors.noteKept("Tablet of " + "j".repeat(200), new Anchor(3, "c".repeat(64), null, "", null));
		assertThat(kept("Tablet of " + "j".repeat(110)).line()).isEqualTo(3);
	}

	private RecordAnchors.Kept kept(String place) {
		return this.anchors.kept().stream().filter((kept) -> kept.place().equals(place)).findFirst().orElseThrow();
	}

	@Test
	void noLineTellsOfAVersionThatWasNeverPublished() {
		assertThat(this.anchors.ofVersion(UUID.randomUUID(), 1, "f")).isEmpty();
	}

}
