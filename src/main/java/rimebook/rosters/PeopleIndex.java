package rimebook.rosters;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import rimebook.shared.FoldedName;

/** People by their names in whatever form, for many questions at once. */
final class PeopleIndex {

	private final Map<String, List<SkaterView>> people = new HashMap<>();

	PeopleIndex(List<SkaterView> people) {
		people.forEach(this::add);
	}

	void add(SkaterView skater) {
		this.people.computeIfAbsent(key(skater.name()), (name) -> new ArrayList<>()).add(skater);
	}

	/** Put what is known now in place of what was known of somebody. */
	void replace(SkaterView skater) {
		this.people.values().forEach((those) -> those.removeIf((one) -> one.id().equals(skater.id())));
		add(skater);
	}

	/** Whoever has that name. */
	List<SkaterView> called(String name) {
		return this.people.getOrDefault(key(name), List.of());
	}

	/**
	 * Who that is: the same name and the same birth date or number, else the only one of
	 * that name in that club, unless birth date or number speak against it.
	 */
	Optional<SkaterView> same(DraftSkater draft) {
		List<SkaterView> called = called(draft.name());
		return called.stream()
			.filter((one) -> isSame(one.facts(), draft))
			.findFirst()
			.or(() -> (called.size() == 1) ? called.stream().filter((one) -> mayBe(one.facts(), draft)).findFirst()
					: Optional.empty());
	}

	static boolean isSame(SkaterView.Facts facts, DraftSkater draft) {
		boolean born = draft.birthDate() != null && draft.birthDate().equals(facts.birthDate());
		boolean numbered = !draft.membershipNumber().isEmpty()
				&& draft.membershipNumber().equalsIgnoreCase(facts.membershipNumber());
		return born || numbered;
	}

	private static boolean mayBe(SkaterView.Facts facts, DraftSkater draft) {
		boolean dates = draft.birthDate() == null || facts.birthDate() == null;
		boolean numbers = draft.membershipNumber().isEmpty() || facts.membershipNumber().isEmpty();
		return dates && numbers && facts.club().equals(draft.club());
	}

	private static String key(String name) {
		return FoldedName.of(name).key();
	}

}
