package rimebook.rosters;

import java.security.SecureRandom;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Two people who were written down turn out to be one. The places of the one go to the
 * other, who also gets what was not known of them; what was written down of the one stays
 * beside it, so nothing is lost and it can be taken back. What others keep still names
 * the one, and {@link Skaters#today} says who that is.
 */
@Service
@Transactional(readOnly = true)
public class SamePerson {

	private final SkaterRepository skaters;

	private final RosterPlaceRepository places;

	private final Skaters people;

	private final Entries entries;

	private final Competitions competitions;

	private final Acts acts;

	private final SecureRandom random = new SecureRandom();

	SamePerson(SkaterRepository skaters, RosterPlaceRepository places, Skaters people, Entries entries,
			Competitions competitions, Acts acts) {
		this.skaters = skaters;
		this.places = places;
		this.people = people;
		this.entries = entries;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Say that somebody is another person who is known.
	 * @return the other, with what was filled in
	 * @throws ConflictException {@code stale-version}; {@code skater-deleted};
	 * {@code skater-merged}; {@code skater-has-others} if others turned out to be the one
	 * before; {@code skater-twice} if both are on one roster now
	 * @throws RuleViolationException {@code skater-themselves}; {@code reason-personal};
	 * naming the field that does not fit
	 */
	@Transactional
	public SkaterView merge(Merge order, Actor actor) {
		checkTwo(order);
		hold(order.one(), order.other());
		Skater one = found(order.one());
		Skater other = found(order.other());
		one.require(order.version());
		other.require(order.otherVersion());
		Skaters.checkTellsNothing(order.reason(), one.view());
		Skaters.checkTellsNothing(order.reason(), other.view());
		if (!this.skaters.findByMergedInto(order.one().value()).isEmpty()) {
			throw new ConflictException("skater-has-others", Sentence.of("rosters.skater-has-others"));
		}
		List<RosterPlace> moving = moving(order);
		String before = one.attested();
		one.mergeInto(order.version(), order.other(), this.random);
		this.skaters.flush();
		say(line("skater", order.one(), "skater.merged", actor)
			.from(before, "the same person as " + order.other() + "; " + one.attested())
			.because(order.reason()));
		fillIn(one.view(), other, actor);
		moving.forEach((place) -> move(place, () -> place.giveTo(other), "roster-place.merged", actor));
		return other.view();
	}

	static void checkTwo(Merge order) {
		if (order.one().equals(order.other())) {
			throw RuleViolationException.ofField("skater-themselves", "other",
					Sentence.of("rosters.skater-themselves"));
		}
	}

	/**
	 * The places that go to the other: where the other has one on the same roster, the
	 * one's stays as it is, left.
	 */
	private List<RosterPlace> moving(Merge order) {
		List<RosterPlace> theirs = this.places.findBySkater(order.one().value());
		Set<EntryId> there = this.places.findBySkater(order.other().value())
			.stream()
			.map(RosterPlace::entry)
			.collect(Collectors.toSet());
		theirs.stream()
			.filter((place) -> there.contains(place.entry()) && place.view().role() != PlaceRole.LEFT)
			.findFirst()
			.ifPresent((place) -> {
				throw new ConflictException("skater-twice", Sentence.of("rosters.skater-twice",
						this.entries.entry(place.entry()).team().name(), place.view().number()));
			});
		return theirs.stream().filter((place) -> !there.contains(place.entry())).toList();
	}

	private void fillIn(SkaterView one, Skater other, Actor actor) {
		SkaterView.Facts known = other.view().facts();
		DraftSkater filled = new DraftSkater(known.givenName(), known.familyName(),
				(known.birthDate() != null) ? known.birthDate() : one.facts().birthDate(),
				known.membershipNumber().isEmpty() ? one.facts().membershipNumber() : known.membershipNumber(),
				known.club());
		if (!filled.facts().equals(known)) {
			String before = other.attested();
			other.change(other.view().version(), filled, this.random);
			this.skaters.flush();
			say(line("skater", other.view().id(), "skater.changed", actor).from(before,
					other.differences(known) + "; " + other.attested()));
		}
	}

	private void move(RosterPlace place, Runnable giving, String act, Actor actor) {
		String before = place.inWordsWithWhose();
		giving.run();
		this.places.flush();
		say(line("roster-place", place.id(), act, actor).from(before, place.inWordsWithWhose()));
	}

	/**
	 * Say that somebody is a person of their own after all: the places that went to the
	 * other come back. What was filled in there stays, since nobody can tell it from what
	 * was known besides.
	 * @throws ConflictException {@code stale-version}; {@code skater-deleted};
	 * {@code skater-apart} if they are somebody of their own
	 */
	@Transactional
	public SkaterView separate(SkaterView.Id id, int version, @Nullable String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		hold(id, id);
		Skater one = found(id);
		SkaterView.Id other = one.view().mergedInto();
		if (other == null) {
			throw new ConflictException("skater-apart", Sentence.of("rosters.skater-apart"));
		}
		if (one.view().isErased()) {
			throw new ConflictException("skater-deleted", Sentence.of("rosters.skater-deleted"));
		}
		Skaters.checkTellsNothing(why, one.view());
		String before = one.attested();
		one.separate(version, this.random);
		this.skaters.flush();
		say(line("skater", id, "skater.separated", actor)
			.from("the same person as " + other + "; " + before, one.attested())
			.because(why));
		this.places.findByMergedFrom(id.value())
			.forEach((place) -> move(place, () -> place.giveBackTo(one), "roster-place.given-back", actor));
		return one.view();
	}

	/** Who turned out to be that person, with what was written down of them. */
	public List<SkaterView> alsoWrittenDown(SkaterView.Id id) {
		return this.skaters.findByMergedInto(id.value())
			.stream()
			.map(Skater::view)
			.filter((one) -> !one.isErased())
			.toList();
	}

	/**
	 * Who may be the same person: a name that is nearly the same, the same number, or the
	 * same birth date; the likeliest first.
	 */
	public List<SkaterView> candidates(SkaterView.Id id) {
		SkaterView one = found(id).view();
		return this.people.all()
			.stream()
			.filter((other) -> !other.id().equals(id) && likeness(one, other) > 0)
			.sorted(Comparator.comparing((SkaterView other) -> -likeness(one, other)))
			.limit(30)
			.toList();
	}

	private static int likeness(SkaterView one, SkaterView other) {
		FoldedName name = FoldedName.of(one.name());
		FoldedName others = FoldedName.of(other.name());
		boolean numbered = !one.facts().membershipNumber().isEmpty()
				&& one.facts().membershipNumber().equalsIgnoreCase(other.facts().membershipNumber());
		boolean born = one.facts().birthDate() != null
				&& Objects.equals(one.facts().birthDate(), other.facts().birthDate());
		return (name.isSameAs(others) ? 4 : name.isNear(others) ? 2 : 0) + (numbered ? 4 : 0) + (born ? 1 : 0);
	}

	/** In one order, so that nobody waits for somebody who waits for them. */
	private void hold(SkaterView.Id one, SkaterView.Id other) {
		Set<UUID> rosters = new HashSet<>(this.places.entriesOf(one.value()));
		rosters.addAll(this.places.entriesOf(other.value()));
		rosters.stream()
			.map((entry) -> this.competitions.event(this.entries.entry(new EntryId(entry)).event()).competition())
			.map(CompetitionId::value)
			.distinct()
			.sorted()
			.forEach((competition) -> this.competitions.holding(new CompetitionId(competition)));
	}

	private void say(AuditedChange change) {
		this.acts.publish(change);
	}

	private static AuditedChange line(String subject, Object id, String act, Actor actor) {
		return AuditedChange.of(actor, subject, id, act);
	}

	private Skater found(SkaterView.Id id) {
		return this.skaters.findById(id.value()).orElseThrow(() -> NotFoundException.of("skater", id));
	}

	/**
	 * The order to say that somebody is another person, or that they are not.
	 *
	 * @param one whose places go to the other, with the version that was seen
	 * @param other who stays, with the version that was seen
	 * @param reason up to 500 characters, kept on the record, so it names nobody
	 */
	public record Merge(SkaterView.Id one, int version, SkaterView.Id other, int otherVersion, String reason) {

		public Merge {
			reason = Required.text("reason", reason, 500);
		}

	}

}
