package rimebook.rosters;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import rimebook.shared.FoldedName;

/** People by their names in whatever form, for many questions at once. */
final class PeopleIndex {

	private final Map<String, List<SkaterView>> people = new HashMap<>();

	PeopleIndex(List<SkaterView> people) {
		people.forEach(this::add);
	}

	private void add(SkaterView skater) {
		this.people.computeIfAbsent(key(skater.name()), (name) -> new ArrayList<>()).add(skater);
	}

	/** Whoever has that name. */
	List<SkaterView> called(String name) {
		return this.people.getOrDefault(key(name), List.of());
	}

	/**
	 * Who that is: the same name and the same birth date or number; else the only one of
	 * that name on the roster, so that a file sent again finds whom it put there; else
	 * the only one of that name, in that club. Never somebody against whom birth date or
	 * number speak.
	 * @param there who is on the roster
	 */
	Optional<SkaterView> same(DraftSkater draft, Set<SkaterView.Id> there) {
		List<SkaterView> called = called(draft.name());
		List<SkaterView> onIt = called.stream().filter((one) -> there.contains(one.id())).toList();
		return called.stream()
			.filter((one) -> isSame(one.facts(), draft))
			.findFirst()
			.or(() -> only(onIt).filter((one) -> mayBe(one.facts(), draft)))
			.or(() -> only(called).filter((one) -> mayBe(one.facts(), draft) && one.club().equals(draft.club())));
	}

	private static Optional<SkaterView> only(List<SkaterView> people) {
		return (people.size() == 1) ? Optional.of(people.get(0)) : Optional.empty();
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
		return dates && numbers;
	}

	private static String key(String name) {
		return FoldedName.of(name).key();
	}

}
