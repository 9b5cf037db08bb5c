package rimebook.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.EventStanding;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.SegmentStanding;
import rimebook.testsupport.RequiresPython;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The program inside an archive, with the Python of this machine: it says good of what is
 * good and finds what is not, also where the hashes were made anew.
 */
@RequiresPython
class VerifyPyTests {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final Random random = new Random(20261129);

	@TempDir
	private Path folder;

	@BeforeEach
	void unpack() throws IOException {
		Archives.unpacked(ArchiveOfLayout1Tests.SAMPLE, this.folder);
		Files.writeString(this.folder.resolve("verify.py"), ArchiveTexts.python());
		hashAnew();
	}

	private void hashAnew() throws IOException {
		Map<String, String> manifest = new TreeMap<>();
		try (var files = Files.walk(this.folder)) {
			for (Path file : files.filter(Files::isRegularFile).toList()) {
				manifest.put(this.folder.relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
			}
		}
		manifest.remove(SealedZip.MANIFEST);
		StringBuilder lines = new StringBuilder();
		manifest.forEach((name, digest) -> lines.append(digest).append("  ").append(name).append('\n'));
		Files.writeString(this.folder.resolve(SealedZip.MANIFEST), lines);
	}

	private String python() throws IOException {
		Process python = new ProcessBuilder("python3", "verify.py").directory(this.folder.toFile())
			.redirectErrorStream(true)
			.start();
		return new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
	}

	@Test
	void saysGoodOfWhatIsGoodInFortyLines() throws IOException {
		assertThat(python()).matches("As it was written: \\d+ lines of the record, head [0-9a-f]{64}; "
				+ "\\d\\d+ places of placement judging follow from the marks.\n");
		assertThat(ArchiveTexts.python().lines().skip(1)).hasSizeLessThanOrEqualTo(40);
	}

	@Test
	void findsAChangedFile() throws IOException {
		Path page = this.folder.resolve("index.html");
		Files.writeString(page, Files.readString(page) + " ");
		assertThat(python()).startsWith("NOT AS IT WAS WRITTEN: the file index.html");
	}

	@Test
	void findsWhatWasHashedAnew() throws IOException {
		finds("record/lines.jsonl", (text) -> text.replaceFirst("\"reason\":\"", "\"reason\":\"x"), "line ");
		finds("record/lines.jsonl", (text) -> text.replaceFirst("[^\n]+\n$", ""), "the end of the record");
		finds("record/lines.jsonl", (text) -> text.replaceFirst("[^\n]+\n", ""), "line 1");
		Path body = bodies().get(0);
		finds(this.folder.relativize(body).toString(), (text) -> text + " ", "the fingerprint of data/result_version/");
	}

	/** Who makes the fingerprints anew as well still has to tabulate. */
	@Test
	void findsAPlaceThatDoesNotFollow() throws IOException {
		int found = 0;
		for (Path body : bodies()) {
			String text = Files.readString(body);
			if (text.contains("\"place\":2,")) {
				findsIn(body, text.replaceFirst("\"place\":2,", "\"place\":3,"));
				findsIn(body, text.replaceFirst("\"ordinal\":\"1\"", "\"ordinal\":\"2\"")
					.replaceFirst("\"total\":\\d+", "\"total\":1"));
				found++;
			}
		}
		assertThat(found).isPositive();
	}

	private void findsIn(Path body, String forged) throws IOException {
		String text = Files.readString(body);
		Path versions = this.folder.resolve("data/result_version.json");
		String listed = Files.readString(versions);
		Files.writeString(versions, listed.replace(digest(text), digest(forged)));
		Files.writeString(body, forged);
		hashAnew();
		assertThat(python()).matches("NOT AS IT WAS WRITTEN: the (place|total) of .*\n");
		Files.writeString(versions, listed);
		Files.writeString(body, text);
		hashAnew();
	}

	private static String digest(String text) {
		return Sha256.of(text.getBytes(StandardCharsets.UTF_8));
	}

	private List<Path> bodies() throws IOException {
		try (var bodies = Files.list(this.folder.resolve("data/result_version"))) {
			return bodies.sorted().toList();
		}
	}

	private void finds(String file, UnaryOperator<String> change, String what) throws IOException {
		Path path = this.folder.resolve(file);
		String text = Files.readString(path);
		assertThat(change.apply(text)).isNotEqualTo(text);
		Files.writeString(path, change.apply(text));
		hashAnew();
		assertThat(python()).startsWith("NOT AS IT WAS WRITTEN: " + what);
		Files.writeString(path, text);
		hashAnew();
		assertThat(python()).startsWith("As it was written");
	}

	/** Both ways of placement judging, every policy, ties, teams without marks. */
	@Test
	void hasThePlacesOfTheTabulation() throws IOException {
		List<Map<String, Object>> events = new ArrayList<>();
		List<Map<String, Object>> segments = new ArrayList<>();
		List<Map<String, Object>> versions = new ArrayList<>();
		for (int i = 0; i < 300; i++) {
			PlacementRules rules = rules();
			events.add(Map.of("id", "e" + i, "policies", policies(rules)));
			segments.add(Map.of("id", "s" + i, "event_id", "e" + i, "kind",
					(rules.cardTieBreak() == PlacementRules.CardTieBreak.FIRST_MARK) ? "SHORT" : "FREE"));
			SegmentStanding standing = PlacementTabulation.ofCards(rules, entries());
			versions.add(version("s" + i, segment(rules, standing)));
			versions.add(version("e" + i, event(rules)));
		}
		write("data/event.json", events);
		write("data/segment.json", segments);
		write("data/result_version.json", versions);
		hashAnew();
		assertThat(python()).startsWith("As it was written");
	}

	private void write(String file, Object content) throws IOException {
		Files.writeString(this.folder.resolve(file), JSON.writeValueAsString(content));
	}

	private Map<String, Object> version(String scope, Map<String, Object> body) throws IOException {
		String file = "data/result_version/" + scope + ".json";
		write(file, body);
		return Map.of("scope_id", scope, "body", file, "fingerprint", digest(JSON.writeValueAsString(body)));
	}

	private <E extends Enum<E>> E any(Class<E> kind) {
		E[] values = kind.getEnumConstants();
		return values[this.random.nextInt(values.length)];
	}

	private PlacementRules rules() {
		SegmentKind kind = any(SegmentKind.class);
		return (this.random.nextBoolean() ? PlacementRules.majority(kind) : PlacementRules.oneByOne(kind))
			.withCardTieBreak(any(PlacementRules.CardTieBreak.class))
			.withSharedOrdinals(any(PlacementRules.SharedOrdinals.class))
			.withEqualJudgesInFavour(any(PlacementRules.EqualJudgesInFavour.class))
			.withEvenPanel(PlacementRules.EvenPanel.ALLOW)
			.withDisqualifiedPlaces(any(DisqualifiedPlaces.class));
	}

	private static String policies(PlacementRules rules) {
		return JSON.writeValueAsString(Map.of("freeSkatingTieBreak", rules.cardTieBreak().name(), "sharedOrdinals",
				rules.sharedOrdinals().name(), "equalJudgesInFavour", rules.equalJudgesInFavour().name(),
				"disqualifiedPlaces", rules.disqualifiedPlaces().name()));
	}

	private List<EntryCards> entries() {
		int judges = 1 + this.random.nextInt(9);
		return IntStream.range(0, 1 + this.random.nextInt(9)).mapToObj((i) -> switch (this.random.nextInt(9)) {
			case 0 -> EntryCards.without("E" + i, any(EntryStatus.class, EntryStatus.SKATED));
			case 1 -> new EntryCards("E" + i, EntryStatus.DISQUALIFIED, cards(judges));
			default -> EntryCards.skated("E" + i, cards(judges));
		}).toList();
	}

	private EntryStatus any(Class<EntryStatus> kind, EntryStatus but) {
		EntryStatus status = any(kind);
		return (status == but) ? EntryStatus.WITHDRAWN : status;
	}

	/** Few different marks, so that much is level. */
	private List<CardMarks> cards(int judges) {
		return IntStream.range(0, judges)
			.mapToObj((judge) -> new CardMarks(300 + 10 * this.random.nextInt(3), 300 + 10 * this.random.nextInt(3)))
			.toList();
	}

	private static Map<String, Object> segment(PlacementRules rules, SegmentStanding standing) {
		return standing(rules, List.of(),
				standing.rows()
					.stream()
					.map((row) -> row(row.entry(), row.status().name(), row.place(), cards(row)))
					.toList());
	}

	private static List<Map<String, Object>> cards(PlacedEntry row) {
		return IntStream.range(0, row.cards().size())
			.mapToObj((i) -> Map.<String, Object>of("first", row.cards().get(i).first(), "second",
					row.cards().get(i).second(), "ordinal",
					(i < row.ordinals().size()) ? Hundredths.plain(row.ordinals().get(i)) : ""))
			.toList();
	}

	private Map<String, Object> event(PlacementRules rules) {
		List<Integer> factors = List.of(50, 100, 30).subList(0, 1 + this.random.nextInt(3));
		CombinationRules combination = CombinationRules.ofFactors(factors)
			.withDisqualifiedPlaces(rules.disqualifiedPlaces());
		EventStanding standing = Combination.combine(combination,
				IntStream.range(0, 1 + this.random.nextInt(9)).mapToObj((i) -> places(i, factors.size())).toList());
		return standing(rules, factors.stream().map((factor) -> Map.<String, Object>of("factor", factor)).toList(),
				standing.rows().stream().map((row) -> {
					Map<String, @Nullable Object> cells = row(row.entry(), row.status().name(), row.place(), List.of());
					cells.put("segmentPlaces", row.places());
					cells.put("total", row.total());
					return cells;
				}).toList());
	}

	private EntryPlaces places(int entry, int segments) {
		List<@Nullable Integer> places = new ArrayList<>();
		for (int i = 0; i < segments; i++) {
			places.add((this.random.nextInt(8) == 0) ? null : 1 + this.random.nextInt(9));
		}
		return new EntryPlaces("E" + entry, (this.random.nextInt(6) == 0) ? any(EntryStatus.class) : EntryStatus.SKATED,
				places);
	}

	private static Map<String, @Nullable Object> row(String entry, String status, @Nullable Integer place,
			List<Map<String, Object>> cards) {
		Map<String, @Nullable Object> row = new LinkedHashMap<>();
		row.put("entry", entry);
		row.put("team", entry);
		row.put("status", status);
		row.put("place", place);
		row.put("cards", cards);
		row.put("segmentPlaces", List.of());
		return row;
	}

	private static Map<String, Object> standing(PlacementRules rules, List<Map<String, Object>> segments,
			List<Map<String, @Nullable Object>> rows) {
		return Map.of("method", rules.method().name(), "segments", segments, "rows", rows);
	}

}
