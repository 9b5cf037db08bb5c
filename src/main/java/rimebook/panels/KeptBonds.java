package rimebook.panels;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import tools.jackson.databind.json.JsonMapper;

import rimebook.wording.Sentence;

/**
 * The bonds that were set aside for a seat, one on a line: each by its key and arguments;
 * those from before there were keys in their English words. One is known again by what it
 * says, however it is put together.
 */
final class KeptBonds {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private KeptBonds() {
	}

	static String written(List<Sentence> bonds) {
		return bonds.stream().map(JSON::writeValueAsString).collect(Collectors.joining("\n"));
	}

	/** Those of the bonds that are not among the ones that were kept. */
	static List<Sentence> without(String kept, List<Sentence> bonds) {
		Set<String> known = kept.lines().map(KeptBonds::english).collect(Collectors.toSet());
		return bonds.stream().filter((bond) -> !known.contains(bond.english())).toList();
	}

	private static String english(String line) {
		return line.startsWith("{") ? JSON.readValue(line, Sentence.class).english() : line;
	}

}
