package rimebook.letters;

import java.util.Map;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class PlaceholdersTests {

	@Test
	void everyPlaceIsFilledInAndWhatIsFilledInIsLeftAlone() {
		assertThat(
				Placeholders.fill("[team] of [club], [team]", Map.of("team", "[club] $1 \\ Ä", "club", "Frost")).text())
			.isEqualTo("[club] $1 \\ Ä of Frost, [club] $1 \\ Ä");
	}

	@Test
	void whatNobodyCanFillInIsNamedOnce() {
		assertThat(Placeholders.unknown("[team] [tema] [Team] [tema] [] [a\nb]")).containsExactly("tema", "Team");
	}

	@Test
	void aLineOfFactsAloneIsLeftOutWhereThereAreNone() {
		assertThat(Placeholders.fill("One\n[facts]\nTwo", Map.of("facts", "")).text()).isEqualTo("One\nTwo");
		assertThat(Placeholders.fill("One [facts]!", Map.of("facts", "")).text()).isEqualTo("One !");
		assertThat(Placeholders.fill("One\n[facts]\nTwo", Map.of("facts", "- a\n- b")).text())
			.isEqualTo("One\n- a\n- b\nTwo");
	}

	@Test
	void paragraphsAreWhatLiesBetweenBlankLines() {
		assertThat(new Draft.Content("", "Dear,\n\none\ntwo\n  \n\nthree\n").paragraphs()).extracting(Object::toString)
			.containsExactly("[Dear,]", "[one, two]", "[three]");
	}

}
