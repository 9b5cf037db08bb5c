package rimebook.audit;

import java.time.Instant;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class ChainDigestTests {

	private static final RecordLine LINE = line(1, "");

	private static final RecordLine LINE_WITH_ID = line(2, "person:0b9f8f6c-0000-4000-8000-000000000001");

	private static RecordLine line(int form, String actorId) {
		return new RecordLine(1, form, Instant.parse("2026-11-25T14:02:11Z"), "Rune Frost", actorId, "referee",
				"10.0.0.2, Firefox", "entry", "e-1", "entry.withdrawn", "entered", "withdrawn", "für ärgernis, 3:a,",
				ChainDigest.START, "");
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
			.isEqualTo("caa478580adfe5766b942aa725667fe80480586c46e72f855a7ff1d786380a7c");
	}

	@Test
	void coversTheIdentityOfTheActorAndTheForm() {
		assertThat(ChainDigest.of(line(2, "person:other"))).isNotEqualTo(ChainDigest.of(LINE_WITH_ID));
		assertThat(ChainDigest.of(line(1, LINE_WITH_ID.actorId()))).isNotEqualTo(ChainDigest.of(LINE_WITH_ID))
			.isNotEqualTo(ChainDigest.of(LINE));
		assertThat(ChainDigest.of(line(2, ""))).isNotEqualTo(ChainDigest.of(LINE));
	}

	@Test
	void doesNotMistakeOneSplitIntoFieldsForAnother() {
		assertThat(ChainDigest.of(withWords("a", "bc"))).isNotEqualTo(ChainDigest.of(withWords("ab", "c")));
		assertThat(ChainDigest.of(withWords("", "1:a,"))).isNotEqualTo(ChainDigest.of(withWords("1:a,", "")));
	}

	@Test
	void doesNotDependOnTheDigestThatTheLineSaysItHas() {
		RecordLine claimed = new RecordLine(LINE.number(), LINE.form(), LINE.writtenAt(), LINE.actor(), LINE.actorId(),
				LINE.role(), LINE.device(), LINE.subject(), LINE.subjectId(), LINE.action(), LINE.before(),
				LINE.after(), LINE.reason(), LINE.previousDigest(), "something else");
		assertThat(ChainDigest.of(claimed)).isEqualTo(ChainDigest.of(LINE));
	}

	private static RecordLine withWords(String before, String after) {
		return new RecordLine(1, 2, LINE.writtenAt(), "", "", "", "", "", "", "", before, after, "", ChainDigest.START,
				"");
	}

}
