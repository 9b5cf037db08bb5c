package rimebook.results;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.published.Standing;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class ResultVersionRowTests {

	private static final Standing STANDING = new Standing("Cup", "Junior", "Free", "Rulebook", Sentence.NONE,
			"MAJORITY", 7, 1, 2, "", "", List.of(), List.of());

	@ParameterizedTest
	@CsvSource({ "CORRECTED, 'Corrected: ', 'Pine, 5.1 became 5.4.'", "REOPENED, 'Opened again: ', ineligible skater",
			"STATUS, '', 'Corrected: it fell ill'", "POSTED, '', ''" })
	void theCauseIsStoredWithTheNoteAndReadWithoutIt(ResultVersion.Cause cause, String lead, String note) {
		ResultVersionRow row = new ResultVersionRow(UUID.randomUUID(), version(cause, Sentence.said(note)), "");
		assertThat(row).hasFieldOrPropertyWithValue("note", lead + note);
		assertThat(row.with(STANDING).note()).isEqualTo(note);
	}

	@Test
	void whatIsSaidIsKeptForOtherLanguages() {
		Sentence said = Sentence.of("note.status", "Pine",
				Sentence.of("note.became", Sentence.of("note.status.closed"), Sentence.of("note.status.disqualified")));
		ResultVersionRow row = new ResultVersionRow(UUID.randomUUID(), version(ResultVersion.Cause.CORRECTED, said),
				"");
		assertThat(row).hasFieldOrPropertyWithValue("note", "Corrected: Pine, marks count became disqualified.");
		assertThat(row.with(STANDING).said().in(Locale.FRENCH))
			.isEqualTo("Pine, disqualifiée au lieu de notes prises en compte.");
	}

	private static ResultVersion version(ResultVersion.Cause cause, Sentence said) {
		return new ResultVersion(new ResultVersion.Key(ResultVersion.Scope.SEGMENT, UUID.randomUUID(), 3),
				ResultVersion.ResultState.PROVISIONAL, new ResultVersion.Reason(cause, said), Instant.EPOCH, "ff",
				STANDING);
	}

}
