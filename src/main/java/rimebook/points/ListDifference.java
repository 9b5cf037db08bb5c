package rimebook.points;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/** Says in words what became of a list of called elements. */
final class ListDifference {

	private final Map<UUID, CalledElement> before = new LinkedHashMap<>();

	private final Map<UUID, CalledElement> after = new LinkedHashMap<>();

	ListDifference(List<CalledElement> before, List<CalledElement> after) {
		before.forEach((element) -> this.before.put(element.id(), element));
		after.forEach((element) -> this.after.put(element.id(), element));
	}

	/** One part of a sentence for each difference: "ME4 called as element 3". */
	List<String> words() {
		List<String> words = new ArrayList<>();
		this.after.values()
			.stream()
			.filter((element) -> !this.before.containsKey(element.id()))
			.forEach((element) -> words.add(element.code() + " called as element " + element.number()));
		this.before.values()
			.stream()
			.filter((element) -> !this.after.containsKey(element.id()))
			.forEach((element) -> words.add(element.label() + " taken out"));
		this.before.values()
			.stream()
			.flatMap((element) -> Stream.ofNullable(this.after.get(element.id()))
				.flatMap((now) -> changes(element, now).stream()))
			.forEach(words::add);
		if (!order(this.before, this.after).equals(order(this.after, this.before))) {
			words.add("the order changed");
		}
		return words;
	}

	private static List<String> changes(CalledElement old, CalledElement now) {
		List<String> words = new ArrayList<>();
		if (!old.code().equals(now.code())) {
			words.add(old.label() + " changed to " + now.code());
		}
		if (old.worth() != now.worth()) {
			words.add(now.label() + " now " + now.worth().words());
		}
		if (old.review() != now.review()) {
			words.add(now.review() ? now.label() + " put under review" : "review of " + now.label() + " settled");
		}
		return words;
	}

	private static List<UUID> order(Map<UUID, CalledElement> of, Map<UUID, CalledElement> common) {
		return of.keySet().stream().filter(common::containsKey).toList();
	}

}
