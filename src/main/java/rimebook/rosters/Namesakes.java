package rimebook.rosters;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * People on rosters who may have been written down twice: somebody else is known by the
 * same name and birth date. A team's managers are never told of such, so it is the desk
 * that decides: the two are one person ({@link SamePerson}), or they are two, which is
 * kept so that nobody is asked again.
 */
@Service
@Transactional(readOnly = true)
public class Namesakes {

	private final SkaterRepository skaters;

	private final ApartStore store;

	private final Acts acts;

	Namesakes(SkaterRepository skaters, ApartStore store, Acts acts) {
		this.skaters = skaters;
		this.store = store;
		this.acts = acts;
	}

	/**
	 * Who on these rosters may be somebody who is known already, by roster; a roster with
	 * nobody like that is left out. Asks the database the same number of questions
	 * whatever their number.
	 */
	public Map<EntryId, List<Pair>> of(Collection<RosterView> rosters) {
		Set<UUID> people = rosters.stream()
			.flatMap((roster) -> roster.present().stream())
			.filter((place) -> place.skater().isThere() && place.skater().facts().birthDate() != null)
			.map((place) -> place.skater().id().value())
			.collect(Collectors.toSet());
		if (people.isEmpty()) {
			return Map.of();
		}
		Map<SkaterView.Id, List<SkaterView>> others = others(people);
		Map<EntryId, List<Pair>> pairs = new LinkedHashMap<>();
		rosters.forEach((roster) -> {
			List<Pair> here = new ArrayList<>();
			roster.present()
				.forEach((place) -> others.getOrDefault(place.skater().id(), List.of())
					.forEach((other) -> here.add(new Pair(place, other))));
			if (!here.isEmpty()) {
				pairs.put(roster.entry(), here);
			}
		});
		return pairs;
	}

	/**
	 * Whole clubs may have one birth date, where a file gave it to all whose own is not
	 * known; so people are sorted by name and none is compared with each other one.
	 */
	private Map<SkaterView.Id, List<SkaterView>> others(Set<UUID> people) {
		List<List<SkaterView>> alike = this.skaters.bornOnDaysOf(people)
			.stream()
			.map(Skater::view)
			.filter((one) -> !FoldedName.of(one.name()).key().isEmpty())
			.collect(Collectors.groupingBy(Namesakes::person, LinkedHashMap::new, Collectors.toList()))
			.values()
			.stream()
			.filter((group) -> group.size() > 1)
			.toList();
		if (alike.isEmpty()) {
			return Map.of();
		}
		Set<Set<SkaterView.Id>> apart = this.store.apart();
		Map<SkaterView.Id, List<SkaterView>> others = new LinkedHashMap<>();
		for (List<SkaterView> group : alike) {
			for (SkaterView one : group) {
				group.stream()
					.filter((other) -> other != one && !apart.contains(Set.of(one.id(), other.id())))
					.forEach((other) -> others.computeIfAbsent(one.id(), (id) -> new ArrayList<>()).add(other));
			}
		}
		return others;
	}

	private static List<Object> person(SkaterView one) {
		return List.of(Objects.requireNonNull(one.facts().birthDate()), FoldedName.of(one.name()).key());
	}

	/** Whom somebody was said not to be, what was taken back among them, newest first. */
	public List<Apart> of(SkaterView.Id id) {
		List<ApartStore.Row> rows = this.store.of(id);
		Map<SkaterView.Id, SkaterView> others = new LinkedHashMap<>();
		this.skaters.findAllById(rows.stream().map((row) -> row.otherThan(id).value()).toList())
			.forEach((other) -> others.put(other.view().id(), other.view()));
		return rows.stream()
			.map((row) -> new Apart(row.id(), Objects.requireNonNull(others.get(row.otherThan(id))), row.said(),
					row.takenBack()))
			.toList();
	}

	/**
	 * Say that two people are two.
	 * @throws ConflictException {@code stale-version}; {@code skater-deleted};
	 * {@code skater-merged}; {@code skater-kept-apart} if somebody said so already
	 * @throws rimebook.shared.RuleViolationException {@code reason-personal};
	 * {@code skater-themselves}; naming the field that does not fit
	 */
	@Transactional
	public void keepApart(SamePerson.Merge pair, Actor actor) {
		SamePerson.checkTwo(pair);
		this.store.hold(pair.one(), pair.other());
		Skater one = found(pair.one());
		Skater other = found(pair.other());
		one.require(pair.version());
		other.require(pair.otherVersion());
		Skaters.checkTellsNothing(pair.reason(), one.view());
		Skaters.checkTellsNothing(pair.reason(), other.view());
		if (this.store.apart().contains(Set.of(pair.one(), pair.other()))) {
			throw new ConflictException("skater-kept-apart", Sentence.of("rosters.skater-kept-apart"));
		}
		this.store.add(this.acts.nextId(), pair.one(), pair.other(),
				new Said(pair.reason(), actor.name(), this.acts.now()));
		this.acts.publish(AuditedChange.of(actor, "skater", pair.one(), "skater.kept-apart")
			.from("perhaps the same person as " + pair.other(), "not the same person as " + pair.other())
			.because(pair.reason()));
	}

	/**
	 * Take back that two people are two: the desk is asked again.
	 * @param id which decision, of the person that is looked at
	 * @throws NotFoundException if they have no such decision
	 * @throws ConflictException {@code skater-apart-gone} if it was taken back already
	 * @throws rimebook.shared.RuleViolationException {@code reason-personal}; naming the
	 * field that does not fit
	 */
	@Transactional
	public void askAgain(SkaterView.Id skater, UUID id, @Nullable String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		ApartStore.Row row = this.store.of(skater)
			.stream()
			.filter((one) -> one.id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("skater", id));
		Skaters.checkTellsNothing(why, found(skater).view());
		Skaters.checkTellsNothing(why, found(row.otherThan(skater)).view());
		if (!this.store.takeBack(id, new Said(why, actor.name(), this.acts.now()))) {
			throw new ConflictException("skater-apart-gone", Sentence.of("rosters.skater-apart-gone"));
		}
		this.acts.publish(AuditedChange.of(actor, "skater", skater, "skater.kept-apart-no-more")
			.from("not the same person as " + row.otherThan(skater),
					"perhaps the same person as " + row.otherThan(skater))
			.because(why));
	}

	private Skater found(SkaterView.Id id) {
		return this.skaters.findById(id.value()).orElseThrow(() -> NotFoundException.of("skater", id));
	}

	/**
	 * Somebody on a roster, and somebody else of the same name and birth date.
	 */
	public record Pair(RosterView.Place place, SkaterView other) {
	}

	/**
	 * That somebody is not another.
	 *
	 * @param takenBack {@code null} as long as it holds
	 */
	public record Apart(UUID id, SkaterView other, Said said, @Nullable Said takenBack) {

		/** Tell whether it holds. */
		public boolean holds() {
			return this.takenBack == null;
		}

	}

	/** Why, who and when. */
	public record Said(String reason, String by, Instant at) {
	}

}
