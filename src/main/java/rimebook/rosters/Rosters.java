package rimebook.rosters;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.TeamView;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Who skates for a team in an event, who stands by, and who was to and left. Every change
 * takes hold of the competition first, so two people at one roster come one after the
 * other, and the later one is told if what they looked at is not so any more.
 */
@Service
@Transactional(readOnly = true)
public class Rosters {

	private final RosterPlaceRepository places;

	private final SkaterRepository skaters;

	private final Skaters people;

	private final EventRulesRepository rules;

	private final RosterWindow window;

	private final Competitions competitions;

	private final Entries entries;

	private final Acts acts;

	Rosters(RosterPlaceRepository places, SkaterRepository skaters, Skaters people, EventRulesRepository rules,
			RosterWindow window, Competitions competitions, Entries entries, Acts acts) {
		this.places = places;
		this.skaters = skaters;
		this.people = people;
		this.rules = rules;
		this.window = window;
		this.competitions = competitions;
		this.entries = entries;
		this.acts = acts;
	}

	/**
	 * Put somebody on a roster who is known, or who was on it and left.
	 * @param reason why, where the window asks for one; else may be empty
	 * @throws ConflictException {@code on-the-roster}; {@code skater-deleted};
	 * {@code skater-merged}; {@code roster-referees}; what
	 * {@link rimebook.competition.StillOpen} refuses
	 * @throws RuleViolationException {@code roster-reason-missing};
	 * {@code reason-personal}
	 * @throws NotFoundException if there is no such entry or person
	 */
	@Transactional
	public RosterView.Place add(EntryId entry, SkaterView.Id skater, PlaceRole role, @Nullable String reason,
			Actor actor) {
		String why = admit(entry, reason, actor);
		Skater person = this.skaters.findById(skater.value()).orElseThrow(() -> NotFoundException.of("skater", skater));
		person.require(person.view().version());
		List<RosterPlace> there = this.places.findByEntryIn(List.of(entry.value()));
		Optional<RosterPlace> former = there.stream()
			.filter((place) -> place.view().skater().id().equals(skater))
			.findFirst();
		if (former.isPresent()) {
			return again(former.get(), role, why, actor);
		}
		Skaters.checkTellsNothing(why, person.view());
		RosterPlace place = this.places
			.saveAndFlush(new RosterPlace(this.acts.nextId(), entry, there.size() + 1, person, role, this.acts.now()));
		this.acts.publish(AuditedChange.of(actor, "roster-place", place.id(), "roster-place.taken")
			.to(place.inWords())
			.because(why));
		return place.view();
	}

	/**
	 * Put somebody on a roster as they are written down: who is known by the same name
	 * and the same birth date or number is that person, somebody else of that name is
	 * asked about, anybody else is new.
	 * @param another whether the person says that it is nobody who is known by that name
	 * @throws ConflictException {@code skater-known}, and as {@link #add}
	 */
	@Transactional
	public RosterView.Place addNew(EntryId entry, DraftSkater draft, PlaceRole role, boolean another,
			@Nullable String reason, Actor actor) {
		Optional<SkaterView> same = this.people.same(draft);
		if (same.isEmpty() && !another && !this.people.known(draft.name(), draft.club()).isEmpty()) {
			throw new ConflictException("skater-known", "familyName",
					Sentence.of("rosters.skater-known", draft.name()));
		}
		SkaterView skater = same.orElseGet(() -> this.people.add(draft, actor));
		return add(entry, skater.id(), role, reason, actor);
	}

	/**
	 * Put somebody on a roster as those who manage the team write them down. They learn
	 * nothing of anybody who is known: nobody is looked for but on this very roster, and
	 * who was written down twice is made one person by the secretary.
	 * @throws ConflictException {@code on-the-roster} if somebody of that name is on it,
	 * and as {@link #add}
	 */
	@Transactional
	public RosterView.Place addApart(EntryId entry, DraftSkater draft, PlaceRole role, Actor actor) {
		FoldedName name = FoldedName.of(draft.name());
		admit(entry, "", actor);
		of(entry).present()
			.stream()
			.filter((place) -> FoldedName.of(place.skater().name()).isSameAs(name))
			.findFirst()
			.ifPresent((place) -> {
				throw new ConflictException("on-the-roster", "familyName",
						Sentence.of("rosters.on-the-roster", place.skater().name()));
			});
		return add(entry, this.people.add(draft, actor).id(), role, "", actor);
	}

	/**
	 * Mend what is known of somebody on a roster, as far as it is that team's to say.
	 * @param version of the person as they were seen
	 * @throws ConflictException {@code skater-shared} if they are on a roster of another
	 * team, too; and as {@link #add} and {@link Skaters#change}
	 */
	@Transactional
	public SkaterView mend(RosterView.PlaceId id, int version, DraftSkater draft, Actor actor) {
		return this.people.change(ownTo(id, actor).id(), version, draft, actor);
	}

	/**
	 * Note that somebody on a roster agrees that their name is printed, or no longer.
	 * @param version of the person as they were seen
	 * @param on the day they agreed, {@code null} where they do not
	 * @throws ConflictException as {@link #mend}
	 */
	@Transactional
	public SkaterView consent(RosterView.PlaceId id, int version, @Nullable String guardian, @Nullable LocalDate on,
			Actor actor) {
		SkaterView skater = ownTo(id, actor);
		return (on != null) ? this.people.agree(skater.id(), version, guardian, on, actor)
				: this.people.disagree(skater.id(), version, actor);
	}

	private SkaterView ownTo(RosterView.PlaceId id, Actor actor) {
		RosterPlace place = found(id);
		admit(place.entry(), "", actor);
		if (!isOwnTo(id)) {
			throw new ConflictException("skater-shared", Sentence.of("rosters.skater-shared"));
		}
		return place.view().skater();
	}

	/**
	 * Tell whether what is known of somebody on a roster is that team's alone to say:
	 * they are on no roster of another team.
	 */
	public boolean isOwnTo(RosterView.PlaceId id) {
		RosterPlace place = found(id);
		TeamView.Id team = this.entries.entry(place.entry()).team().id();
		return this.places.entriesOf(place.view().skater().id().value())
			.stream()
			.allMatch((entry) -> this.entries.entry(new EntryId(entry)).team().id().equals(team));
	}

	/**
	 * Why those who manage the team of an entry change its roster themselves no longer,
	 * and whom they turn to; empty while they do.
	 */
	public Optional<Sentence> refusalOfManagers(EntryId entry) {
		EventId event = this.entries.entry(entry).event();
		return this.window.refusalOfManagers(
				this.competitions.competition(this.competitions.event(event).competition()),
				this.rules.findById(event.value()).map(EventRules::deadline).orElse(null));
	}

	private RosterView.Place again(RosterPlace former, PlaceRole role, String why, Actor actor) {
		RosterView.Place before = former.view();
		if (before.role() != PlaceRole.LEFT) {
			throw new ConflictException("on-the-roster", "skater",
					Sentence.of("rosters.on-the-roster", before.skater().name()));
		}
		return become(former, before.version(), new Part(role, null, "roster-place.changed", why), actor);
	}

	/**
	 * Give somebody another part on the roster: skate, stand by, or leave it.
	 * @throws ConflictException {@code stale-version}, and as {@link #add}
	 */
	@Transactional
	public RosterView.Place change(RosterView.PlaceId id, int version, PlaceRole role, @Nullable String reason,
			Actor actor) {
		RosterPlace place = found(id);
		String why = admit(place.entry(), reason, actor);
		if (place.view().role() == role) {
			return place.view();
		}
		return become(place, version, new Part(role, null, "roster-place.changed", why), actor);
	}

	/**
	 * Let an alternate skate for somebody who leaves; the roster keeps who it was.
	 * @param version of the alternate's place
	 * @param leaving who leaves, with the version that was seen
	 * @throws ConflictException {@code not-an-alternate} unless the one stands by and the
	 * other skates, and as {@link #add}
	 */
	@Transactional
	public RosterView.Place stepIn(RosterView.PlaceId alternate, int version, RosterView.PlaceId leaving,
			int leavingVersion, @Nullable String reason, Actor actor) {
		RosterPlace stands = found(alternate);
		RosterPlace leaves = found(leaving);
		String why = admit(stands.entry(), reason, actor);
		boolean fits = stands.entry().equals(leaves.entry()) && stands.view().role() == PlaceRole.ALTERNATE
				&& leaves.view().role() == PlaceRole.SKATES;
		if (!fits) {
			throw new ConflictException("not-an-alternate", Sentence.of("rosters.not-an-alternate"));
		}
		become(leaves, leavingVersion, new Part(PlaceRole.LEFT, null, "roster-place.changed", why), actor);
		return become(stands, version,
				new Part(PlaceRole.SKATES, leaves.view().number(), "roster-place.stepped-in", why), actor);
	}

	private RosterView.Place become(RosterPlace place, int version, Part part, Actor actor) {
		Skaters.checkTellsNothing(part.reason(), place.view().skater());
		String before = place.inWords();
		place.become(version, part.role(), part.insteadOf(), this.acts.now());
		this.places.flush();
		this.acts.publish(AuditedChange.of(actor, "roster-place", place.id(), part.act())
			.from(before, place.inWords())
			.because(part.reason()));
		return place.view();
	}

	private String admit(EntryId entry, @Nullable String reason, Actor actor) {
		EventId event = this.entries.entry(entry).event();
		CompetitionView competition = this.competitions.holding(event);
		return this.window.admit(competition, event,
				this.rules.findById(event.value()).map(EventRules::deadline).orElse(null), reason, actor);
	}

	/** The roster of an entry; empty where nobody is on it. */
	public RosterView of(EntryId entry) {
		return of(List.of(entry)).getOrDefault(entry, new RosterView(entry, List.of()));
	}

	/** The rosters of these entries, with one question; each has one. */
	public Map<EntryId, RosterView> of(Collection<EntryId> entries) {
		Map<EntryId, List<RosterView.Place>> places = new LinkedHashMap<>();
		entries.forEach((entry) -> places.put(entry, new ArrayList<>()));
		this.places.findByEntryIn(entries.stream().map(EntryId::value).toList())
			.forEach((place) -> Objects.requireNonNull(places.get(place.entry())).add(place.view()));
		Map<EntryId, RosterView> rosters = new LinkedHashMap<>();
		places.forEach((entry, those) -> rosters.put(entry, new RosterView(entry, those)));
		return rosters;
	}

	/** Every place that somebody has or had, the oldest change first, with its entry. */
	public Map<RosterView.Place, EntryId> of(SkaterView.Id skater) {
		Map<RosterView.Place, EntryId> places = new LinkedHashMap<>();
		this.places.findBySkater(skater.value()).forEach((place) -> places.put(place.view(), place.entry()));
		return places;
	}

	/**
	 * The place of that identity.
	 * @throws NotFoundException if there is none
	 */
	public RosterView.Place place(RosterView.PlaceId id) {
		return found(id).view();
	}

	/**
	 * The entry whose roster has that place.
	 * @throws NotFoundException if there is none
	 */
	public EntryId entryOf(RosterView.PlaceId id) {
		return found(id).entry();
	}

	private RosterPlace found(RosterView.PlaceId id) {
		return this.places.findById(id.value()).orElseThrow(() -> NotFoundException.of("place", id));
	}

	/** What somebody is to become, and what is written down of it. */
	private record Part(PlaceRole role, @Nullable Integer insteadOf, String act, String reason) {
	}

}
