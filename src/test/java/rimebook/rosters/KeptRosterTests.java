package rimebook.rosters;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.entries.EntryId;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class KeptRosterTests {

	private static final String TEXT = """
			roster 1
			entry 00000000-0000-0000-0000-00000000000e
			place 1 left 00000000-0000-0000-0000-000000000001
			place 2 skates 00000000-0000-0000-0000-000000000002
			place 10 skates 00000000-0000-0000-0000-000000000003 instead-of 1
			place 11 alternate 00000000-0000-0000-0000-000000000004
			""";

	@Test
	void isWrittenByTheNumbersOfItsPlaces() {
		KeptRoster roster = new KeptRoster(new EntryId(new UUID(0, 14)),
				List.of(place(11, PlaceRole.ALTERNATE, 4, null), place(10, PlaceRole.SKATES, 3, 1),
						place(1, PlaceRole.LEFT, 1, null), place(2, PlaceRole.SKATES, 2, null)));
		assertThat(roster.text()).isEqualTo(TEXT);
		assertThat(KeptRoster.read(TEXT)).isEqualTo(roster);
		assertThat(roster.onIce()).extracting(KeptRoster.Place::number).containsExactly(2, 10);
	}

	@Test
	void mayBeEmpty() {
		KeptRoster nobody = new KeptRoster(new EntryId(new UUID(0, 14)), List.of());
		assertThat(KeptRoster.read(nobody.text())).isEqualTo(nobody);
	}

	@Test
	void hasEachNumberOnce() {
		assertThatIllegalArgumentException().isThrownBy(() -> new KeptRoster(new EntryId(new UUID(0, 14)),
				List.of(place(1, PlaceRole.SKATES, 1, null), place(1, PlaceRole.SKATES, 2, null))));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "roster 2\nentry 00000000-0000-0000-0000-00000000000e\n", "roster 1\n",
			"roster 1\nentry x\n",
			"roster 1\nentry 00000000-0000-0000-0000-00000000000e\nplace 0 skates 00000000-0000-0000-0000-000000000001\n",
			"roster 1\nentry 00000000-0000-0000-0000-00000000000e\nplace 1 coach 00000000-0000-0000-0000-000000000001\n",
			"roster 1\nentry 00000000-0000-0000-0000-00000000000e\nplace 1 skates 00000000-0000-0000-0000-000000000001",
			"roster 1\nentry 00000000-0000-0000-0000-00000000000e\nplace 2 skates 00000000-0000-0000-0000-000000000001\nplace 1 skates 00000000-0000-0000-0000-000000000002\n" })
	void isNotReadFromAnythingElse(String text) {
		assertThatIllegalArgumentException().isThrownBy(() -> KeptRoster.read(text));
	}

	private static KeptRoster.Place place(int number, PlaceRole role, int skater, Integer insteadOf) {
		return new KeptRoster.Place(number, role, new SkaterView.Id(new UUID(0, skater)), insteadOf);
	}

}
