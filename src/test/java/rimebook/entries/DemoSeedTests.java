package rimebook.entries;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import rimebook.competition.CompetitionId;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;

import static org.assertj.core.api.Assertions.assertThat;

class DemoSeedTests {

	private static final List<EventView> EVENTS = List.of(event("Junior", 1), event("Adult", 2), event("Novice", 3),
			event("Senior", 4));

	@Test
	void holdsFourEventsThatCanBeImportedAsTheyAre() throws IOException {
		RowCheck check = new RowCheck(EVENTS, new KnownTeams(List.of(), List.of()), List.of(), Map.of());
		List<EntryImport.Row> rows = entries().stream().map((row) -> check.check(row, false)).toList();
		assertThat(rows).allMatch(EntryImport.Row::isGood);
		assertThat(counted(rows, EntryImport.Row::event))
			.isEqualTo(Map.of("Junior", 12L, "Adult", 8L, "Novice", 8L, "Senior", 8L));
		assertThat(counted(rows, (row) -> row.names().club())).hasSize(14);
		assertThat(counted(rows, (row) -> row.names().town())).hasSize(14);
	}

	@Test
	void seatsSomeOfficialsWhoseClubHasATeam() throws IOException {
		List<String> officials = Files.readAllLines(Path.of("demo-seed/officials.csv"));
		assertThat(officials).hasSize(27).first().isEqualTo("name,club,qualification");
		assertThat(officials.stream().skip(1).map((line) -> line.split(",", -1)[1]))
			.containsAnyElementsOf(entries().stream().map((row) -> row.names().club()).toList())
			.contains("");
	}

	private static List<EntryImport.Row> entries() throws IOException {
		return ImportFile.read(Files.readString(Path.of("demo-seed/entries.csv"))).rows();
	}

	private static Map<String, Long> counted(List<EntryImport.Row> rows, Function<EntryImport.Row, String> column) {
		return rows.stream().collect(Collectors.groupingBy(column, Collectors.counting()));
	}

	private static EventView event(String name, int position) {
		return new EventView(new EventId(UUID.randomUUID()),
				new EventView.Listing(new CompetitionId(UUID.randomUUID()), position, name, name),
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, 5), List.of(), null, 0);
	}

}
