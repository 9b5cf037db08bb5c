package rimebook.music;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class FileNameTests {

	@ParameterizedTest
	@CsvSource({ "free.mp3, free.mp3", "../../etc/passwd, passwd", "C:\\fakepath\\free.mp3, free.mp3",
			"'a\u0000b\u001b\u202e3pm.exe', ab3pm.exe", "/, ?", "' ', ?", "Räjähdys.ogg, Räjähdys.ogg" })
	void ofAPathOnlyTheLastPartIsKeptAndNothingUnseen(String sent, String kept) {
		assertThat(FileName.sent(sent)).isEqualTo(kept);
	}

	@Test
	void aLongNameIsCutBetweenCharacters() {
		assertThat(FileName.sent("⛸".repeat(300))).hasSize(120).endsWith("⛸…");
		assertThat(FileName.sent("𝄞".repeat(300)).codePoints()).hasSize(120).doesNotContain((int) '?');
	}

	@ParameterizedTest
	@CsvSource({ "Hoarfrost, Hoarfrost", "'Rime, Frost & Co.', 'Rime, Frost & Co'", "A/B\\C:D*E?F, A B C D E F",
			"..., team", "Ледяные узоры, Ледяные узоры", "'CON\u202e', CON", "<a|b>, a b" })
	void aTeamsNameIsSafeOnEverySystem(String team, String name) {
		assertThat(FileName.ofTeam(team)).isEqualTo(name);
	}

}
