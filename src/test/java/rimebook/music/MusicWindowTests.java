package rimebook.music;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class MusicWindowTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			199999 | 3:19; 0:01 shorter than the programme may be (3:20 to 3:40).
			200000 | 3:20; the programme may be 3:20 to 3:40.
			220999 | 3:40; the programme may be 3:20 to 3:40.
			221000 | 3:41; 0:01 longer than the programme may be (3:20 to 3:40).
			300000 | 5:00; 1:20 longer than the programme may be (3:20 to 3:40).""")
	void musicIsSetBesideTheProgrammesWindowBySeconds(long milliseconds, String words) {
		assertThat(new MusicWindow(200, 210, 220).fit(milliseconds).words().english()).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			1000   | 0:01; the programme may be up to 2:50.
			171000 | 2:51; 0:01 longer than the programme may be (up to 2:50).""")
	void whereThereIsNoShortestNothingIsTooShort(long milliseconds, String words) {
		assertThat(new MusicWindow(null, 160, 170).fit(milliseconds).words().english()).isEqualTo(words);
	}

}
