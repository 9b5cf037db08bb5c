package rimebook.audit;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;

import rimebook.competition.SegmentId;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:record;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=20000")
class RecordAnchorsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordAnchors anchors;

	@Autowired
	private RecordVerification verification;

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
		Anchor earlier = new Anchor(1, "a".repeat(64), null, "", null);
		Anchor later = new Anchor(7, "b".repeat(64), null, "", null);
		this.anchors.noteKept("Tablet of Judge 3", earlier);
		this.anchors.noteKept("Second place", earlier);
		this.anchors.noteKept("Tablet of Judge 3", later);
		assertThat(this.anchors.kept())
			.extracting(RecordAnchors.Kept::place, RecordAnchors.Kept::line, RecordAnchors.Kept::digest)
			.contains(tuple("Tablet of Judge 3", 7L, later.digest()), tuple("Second place", 1L, earlier.digest()))
			.doesNotContain(tuple("Tablet of Judge 3", 1L, earlier.digest()));
	}

	@Test
	void aPlaceWithALongNameIsNotedAllTheSame() {
		this.anchors.noteKept("Tablet of " + "j".repeat(200), new Anchor(3, "c".repeat(64), null, "", null));
		assertThat(this.anchors.kept()).extracting(RecordAnchors.Kept::place).contains("Tablet of " + "j".repeat(110));
	}

	@Test
	void noLineTellsOfAVersionThatWasNeverPublished() {
		assertThat(this.anchors.ofVersion(UUID.randomUUID(), 1, "f")).isEmpty();
	}

}
