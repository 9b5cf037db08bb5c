package rimebook.shared;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * Names that are known, in which another one is looked for in whatever form it was typed.
 */
public final class ListedNames {

	private final Function<String, FoldedName> folding;

	private final Map<String, FoldedName> names = new LinkedHashMap<>();

	private ListedNames(Collection<String> names, Function<String, FoldedName> folding) {
		this.folding = folding;
		names.forEach(this::add);
	}

	/** The names of clubs, for which forms such as "SC" do not matter. */
	public static ListedNames ofClubs(Collection<String> names) {
		return new ListedNames(names, FoldedName::ofClub);
	}

	/** The names of teams. */
	public static ListedNames ofTeams(Collection<String> names) {
		return new ListedNames(names, FoldedName::of);
	}

	public void add(String name) {
		this.names.put(name, this.folding.apply(name));
	}

	/**
	 * The name as it is listed: as it was typed, else with another case and other blanks,
	 * else in another form; empty where it is not listed in any way.
	 */
	public Optional<String> same(String typed) {
		FoldedName folded = this.folding.apply(typed);
		return listed((name, form) -> name.equals(typed))
			.or(() -> listed((name, form) -> Name.compared(name).equals(Name.compared(typed))))
			.or(() -> listed((name, form) -> form.isSameAs(folded)));
	}

	/**
	 * A name for which one that is not listed may be a slip; empty where it is listed.
	 */
	public Optional<String> near(String typed) {
		FoldedName folded = this.folding.apply(typed);
		return same(typed).isPresent() ? Optional.empty() : listed((name, form) -> form.isNear(folded));
	}

	private Optional<String> listed(BiPredicate<String, FoldedName> like) {
		return this.names.entrySet()
			.stream()
			.filter((listed) -> like.test(listed.getKey(), listed.getValue()))
			.map(Map.Entry::getKey)
			.findFirst();
	}

}
