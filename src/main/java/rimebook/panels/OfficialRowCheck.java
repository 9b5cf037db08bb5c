package rimebook.panels;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import rimebook.shared.FoldedName;
import rimebook.shared.RuleViolationException;
import rimebook.tables.TableFile;
import rimebook.wording.Sentence;

/**
 * Looks at the rows of a file of officials one after the other, against the register and
 * against the rows before.
 */
final class OfficialRowCheck {

	private final Map<String, OfficialView> register = new HashMap<>();

	private final Map<String, Integer> lines = new HashMap<>();

	OfficialRowCheck(List<OfficialView> register) {
		register.forEach((official) -> this.register.put(key(official.name()), official));
	}

	OfficialImport.Row check(TableFile.Row row) {
		List<Sentence> problems = new ArrayList<>();
		if (!row.fits()) {
			problems.add(Sentence.of("panels.import.row-columns", row.columns()));
		}
		boolean known = false;
		try {
			known = isKnown(draft(row), row.line(), problems);
		}
		catch (RuleViolationException ex) {
			problems.add(ex.sentence());
		}
		return new OfficialImport.Row(row.line(), row.value("name"), row.value("club"), row.value("qualification"),
				known && problems.isEmpty(), problems);
	}

	static DraftOfficial draft(TableFile.Row row) {
		return new DraftOfficial(row.value("name"), row.value("club"), row.value("qualification"));
	}

	private boolean isKnown(DraftOfficial facts, int line, List<Sentence> problems) {
		Integer before = this.lines.putIfAbsent(key(facts.name()), line);
		if (before != null) {
			problems.add(Sentence.of("panels.import.stands-twice", facts.name(), before));
		}
		OfficialView there = this.register.get(key(facts.name()));
		if (there != null && !says(there, facts)) {
			problems
				.add(Sentence.of("panels.import.known-otherwise", there.name(), there.club(), there.qualification()));
		}
		return there != null;
	}

	/**
	 * A column left empty contradicts nothing, nor does another form of a club's name.
	 */
	private static boolean says(OfficialView there, DraftOfficial facts) {
		return (facts.club().isEmpty() || there.club().equals(facts.club())
				|| FoldedName.ofClub(there.club()).isSameAs(FoldedName.ofClub(facts.club())))
				&& (facts.qualification().isEmpty() || there.qualification().equals(facts.qualification()));
	}

	private static String key(String name) {
		return name.toLowerCase(Locale.ROOT);
	}

}
