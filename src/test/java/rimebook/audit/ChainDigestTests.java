package rimebook.audit;

import java.time.Instant;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class ChainDigestTests {

	private static final RecordLine LINE = line(1, "", "");

	private static final RecordLine LINE_WITH_ID = line(2, "person:0b9f8f6c-0000-4000-8000-000000000001",
			"5f".repeat(32));

	private static RecordLine line(int form, String actorId, String evidence) {
		return new RecordLine(new RecordLine.Link(1, form, ChainDigest.START, ""),
				Instant.parse("2026-11-25T14:02:11Z"),
				new RecordLine.Who("Rune Frost", actorId, "referee", "10.0.0.2, Firefox"),
				new RecordLine.Thing("entry", "e-1", evidence),
				new RecordLine.Change("entry.withdrawn", "entered", "withdrawn", "für ärgernis, 3:a,"));
	}

	/**
	 * Computed outside Java from the description in the package, with Python: <pre>
	 * ns = lambda s: str(len(s.encode())).encode() + b":" + s.encode() + b","
	 * hashlib.sha256(b"".join(map(ns, fields))).hexdigest()
	 * </pre>
	 */
	@Test
	void canBeRecomputedByAnybody() {
		assertThat(ChainDigest.of(LINE)).isEqualTo("314bf199812a14b756dac2e532eaf61b8a3aab47c92880fd8263c57caadf156d");
		assertThat(ChainDigest.of(LINE_WITH_ID))
			.isEqualTo("50733c68271543d24c6ef0640929b6c80a55ab4314ea724ec8dd1c22c682a716");
	}

	@Test
	void coversTheIdentityOfTheActorTheEvidenceAndTheForm() {
		String evidence = LINE_WITH_ID.thing().evidence();
		assertThat(Stream
			.of(LINE, LINE_WITH_ID, line(2, "person:other", evidence), line(2, "", ""), line(1, "", evidence),
					line(2, LINE_WITH_ID.who().actorId(), ""), line(1, LINE_WITH_ID.who().actorId(), evidence))
			.map(ChainDigest::of)).doesNotHaveDuplicates();
	}

	@Test
	void doesNotMistakeOneSplitIntoFieldsForAnother() {
		assertThat(ChainDigest.of(withWords("a", "bc"))).isNotEqualTo(ChainDigest.of(withWords("ab", "c")));
		assertThat(ChainDigest.of(withWords("", "1:a,"))).isNotEqualTo(ChainDigest.of(withWords("1:a,", "")));
	}

	@Test
	void doesNotDependOnTheDigestThatTheLineSaysItHas() {
		RecordLine claimed = new RecordLine(
				new RecordLine.Link(LINE.number(), LINE.link().form(), LINE.link().previousDigest(), "something else"),
				LINE.writtenAt(), LINE.who(), LINE.thing(), LINE.change());
		assertThat(ChainDigest.of(claimed)).isEqualTo(ChainDigest.of(LINE));
	}

	private static RecordLine withWords(String before, String after) {
		return new RecordLine(new RecordLine.Link(1, 2, ChainDigest.START, ""), LINE.writtenAt(),
				new RecordLine.Who("", "", "", ""), new RecordLine.Thing("", "", ""),
				new RecordLine.Change("", before, after, ""));
	}

}
