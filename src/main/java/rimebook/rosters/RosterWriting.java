package rimebook.rosters;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.EntityManager;

import rimebook.entries.EntryId;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * Writes the rows of a file, a portion after the other, each in a transaction of whoever
 * asks. It counts what it wrote and remembers whom it wrote down, whatever portion.
 */
final class RosterWriting {

	private final SkaterRepository skaters;

	private final RosterPlaceRepository places;

	private final EntityManager database;

	private final Acts acts;

	private final Actor actor;

	private final SecureRandom random = new SecureRandom();

	private final Map<String, UUID> fresh = new HashMap<>();

	/** Of this portion alone: the next one reads anew. */
	private final Map<UUID, Skater> known = new HashMap<>();

	private final Map<EntryId, List<RosterPlace>> there = new HashMap<>();

	private int people;

	private int placesTaken;

	private int changed;

	RosterWriting(SkaterRepository skaters, RosterPlaceRepository places, EntityManager database, Acts acts,
			Actor actor) {
		this.skaters = skaters;
		this.places = places;
		this.database = database;
		this.acts = acts;
		this.actor = actor;
	}

	/** Look at what is there for the next rows. */
	void begin(List<RosterRow> rows) {
		this.known.clear();
		this.there.clear();
		List<UUID> known = new ArrayList<>();
		rows.forEach((row) -> {
			SkaterView skater = row.asked().known();
			if (skater != null) {
				known.add(skater.id().value());
			}
		});
		this.skaters.findAllById(known).forEach((skater) -> this.known.put(skater.view().id().value(), skater));
		this.places.findByEntryIn(rows.stream().map((row) -> row.asked().entry().id().value()).distinct().toList())
			.forEach((place) -> places(place.entry()).add(place));
	}

	/**
	 * Write one of them.
	 * @throws ConflictException {@code rosters-changed} if what was known of that person
	 * was deleted meanwhile, or they turned out to be somebody else
	 */
	void write(RosterRow row) {
		RosterRow.Order order = row.asked();
		Skater skater = (order.known() != null) ? mended(row, order.known()) : fresh(order.skater());
		List<RosterPlace> places = places(order.entry().id());
		Optional<RosterPlace> place = places.stream()
			.filter((one) -> one.view().skater().id().equals(skater.view().id()))
			.findFirst();
		if (place.isEmpty()) {
			take(order, skater, places);
		}
		else if (place.get().view().role() != order.part()) {
			become(order, place.get());
		}
	}

	RosterImport.Outcome outcome(int setAside) {
		return new RosterImport.Outcome(this.people, this.placesTaken, this.changed, setAside);
	}

	private Skater fresh(DraftSkater draft) {
		UUID before = this.fresh.get(RosterRowCheck.key(draft));
		Skater skater = (before != null) ? this.database.find(Skater.class, before) : null;
		return (skater != null && skater.view().isThere()) ? skater : added(draft);
	}

	private Skater added(DraftSkater draft) {
		Skater skater = new Skater(this.acts.nextId(), draft, this.random);
		this.database.persist(skater);
		this.fresh.put(RosterRowCheck.key(draft), skater.view().id().value());
		this.people++;
		say(AuditedChange.of(this.actor, "skater", skater.view().id(), "skater.added").to(skater.attested()));
		return skater;
	}

	private Skater mended(RosterRow row, SkaterView seen) {
		Skater skater = Objects.requireNonNull(this.known.get(seen.id().value()));
		if (!skater.view().isThere()) {
			throw new ConflictException("rosters-changed", Sentence.of("rosters.import.gone-meanwhile", row.line()));
		}
		DraftSkater merged = RosterRowCheck.merged(skater.view(), row.asked().skater());
		SkaterView.Facts before = skater.view().facts();
		if (!merged.facts().equals(before)) {
			String attested = skater.attested();
			skater.change(skater.view().version(), merged, this.random);
			this.changed++;
			say(AuditedChange.of(this.actor, "skater", seen.id(), "skater.changed")
				.from(attested, skater.differences(before) + "; " + skater.attested()));
		}
		return skater;
	}

	private void take(RosterRow.Order order, Skater skater, List<RosterPlace> places) {
		RosterPlace place = new RosterPlace(this.acts.nextId(), order.entry().id(), places.size() + 1, skater,
				order.part(), this.acts.now());
		this.database.persist(place);
		places.add(place);
		this.placesTaken++;
		say(AuditedChange.of(this.actor, "roster-place", place.id(), "roster-place.taken").to(place.inWords()));
	}

	private void become(RosterRow.Order order, RosterPlace place) {
		String before = place.inWords();
		place.become(place.view().version(), order.part(), null, this.acts.now());
		this.placesTaken++;
		say(AuditedChange.of(this.actor, "roster-place", place.id(), "roster-place.changed")
			.from(before, place.inWords()));
	}

	private List<RosterPlace> places(EntryId entry) {
		return this.there.computeIfAbsent(entry, (one) -> new ArrayList<>());
	}

	private void say(AuditedChange change) {
		this.acts.publish(change);
	}

}
