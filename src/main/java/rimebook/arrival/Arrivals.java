package rimebook.arrival;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.music.Music;
import rimebook.music.MusicView;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Who of each team is here, noted at the door and taken back there. Several may note at
 * once: what was noted already is not noted again, and the last word counts. The record
 * names places on the roster and nobody.
 */
@Service
@Transactional(readOnly = true)
public class Arrivals {

	private final ArrivalNoteRepository notes;

	private final Competitions competitions;

	private final Entries entries;

	private final Rosters rosters;

	private final Contacts contacts;

	private final Music music;

	private final PlannedElements plans;

	private final RequiredElements required;

	private final StillOpen stillOpen;

	private final Acts acts;

	Arrivals(ArrivalNoteRepository notes, Competitions competitions, Entries entries, Rosters rosters,
			Contacts contacts, Music music, PlannedElements plans, RequiredElements required, StillOpen stillOpen,
			Acts acts) {
		this.required = required;
		this.notes = notes;
		this.competitions = competitions;
		this.entries = entries;
		this.rosters = rosters;
		this.contacts = contacts;
		this.music = music;
		this.plans = plans;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Note that somebody is here, or is not; nothing happens where that is noted.
	 * @throws ConflictException {@code arrival-withdrawn} for a team that withdrew;
	 * {@code arrival-left} for somebody who left the roster; what {@link StillOpen}
	 * refuses
	 * @throws NotFoundException if there is no such place
	 */
	@Transactional
	public void note(RosterView.PlaceId place, boolean here, Actor actor) {
		EntryId entry = this.rosters.entryOf(place);
		hold(entry);
		note(entry, of(entry).people().stream().filter((person) -> person.place().id().equals(place)).toList(), here,
				actor);
	}

	/**
	 * Note that everybody on the roster of a team is here.
	 * @throws ConflictException as for {@link #note}
	 * @throws NotFoundException if there is no such entry
	 */
	@Transactional
	public void noteAll(EntryId entry, Actor actor) {
		hold(entry);
		note(entry, of(entry).people(), true, actor);
	}

	private void hold(EntryId id) {
		EntryView entry = this.entries.entry(id);
		this.competitions.holding(entry.event());
		this.stillOpen.require(entry.event());
		if (!entry.isEntered()) {
			throw new ConflictException("arrival-withdrawn", Sentence.of("arrival.withdrawn", entry.team().name()));
		}
	}

	private void note(EntryId entry, List<CheckIn.Person> people, boolean here, Actor actor) {
		if (people.isEmpty()) {
			throw new ConflictException("arrival-left", Sentence.of("arrival.left"));
		}
		List<CheckIn.Person> others = people.stream().filter((person) -> person.isHere() != here).toList();
		if (others.isEmpty()) {
			return;
		}
		Map<RosterView.PlaceId, ArrivalNote> last = last(Set.of(entry));
		for (CheckIn.Person person : others) {
			ArrivalNote before = last.get(person.place().id());
			int number = (before != null) ? before.number() + 1 : 1;
			this.notes.save(new ArrivalNote(this.acts.nextId(), entry, person.place().id(),
					new ArrivalNote.Noted(number, here), actor, this.acts.now()));
		}
		this.notes.flush();
		String places = others.stream()
			.map((person) -> String.valueOf(person.place().number()))
			.collect(Collectors.joining(", ", "places ", ": "));
		this.acts
			.publish(AuditedChange.of(actor, "arrival", entry, here ? "arrival.noted-here" : "arrival.noted-not-here")
				.from(places + (here ? "not here" : "here"), places + (here ? "here" : "not here")));
	}

	/**
	 * One team at the door.
	 * @throws NotFoundException if there is no such entry
	 */
	public CheckIn of(EntryId id) {
		EntryView entry = this.entries.entry(id);
		return checkIns(List.of(this.competitions.event(entry.event())), List.of(entry)).get(0);
	}

	/**
	 * Every team of a competition that takes part in an event that does, by name, with
	 * the same number of questions whatever the number of teams.
	 * @throws NotFoundException if there is no such competition
	 */
	public List<CheckIn> of(CompetitionId id) {
		List<EventView> events = this.competitions.events(this.competitions.competition(id).id())
			.stream()
			.filter((event) -> !event.isCancelled())
			.toList();
		return checkIns(events,
				this.entries.ofEvents(events.stream().map(EventView::id).toList())
					.stream()
					.filter(EntryView::isEntered)
					.toList());
	}

	/**
	 * The teams of an event for which something is left to do; empty where nobody of the
	 * event was seen at the door yet, since then nobody keeps watch there.
	 */
	public Optional<Set<EntryId>> notDone(EventId event) {
		List<EntryView> entries = this.entries.ofEvent(event);
		if (last(entries.stream().map(EntryView::id).toList()).values().stream().noneMatch(ArrivalNote::isHere)) {
			return Optional.empty();
		}
		return Optional.of(checkIns(List.of(this.competitions.event(event)), entries).stream()
			.filter((team) -> !team.isDone())
			.map((team) -> team.entry().id())
			.collect(Collectors.toSet()));
	}

	/** The teams of an event that take part. */
	List<CheckIn> taking(EventId event) {
		return checkIns(List.of(this.competitions.event(event)),
				this.entries.ofEvent(event).stream().filter(EntryView::isEntered).toList());
	}

	private List<CheckIn> checkIns(List<EventView> events, List<EntryView> entries) {
		List<EntryId> ids = entries.stream().map(EntryView::id).toList();
		Map<EventId, EventView> byId = events.stream().collect(Collectors.toMap(EventView::id, Function.identity()));
		Map<EntryId, RosterView> rosters = this.rosters.of(ids);
		Map<EntryId, List<ContactView>> contacts = this.contacts.of(ids);
		Map<RosterView.PlaceId, ArrivalNote> seen = last(ids);
		Map<EntryId, Set<SegmentId>> music = music(events);
		Set<SegmentId> kept = music.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
		Map<EntryId, Set<SegmentId>> plans = this.plans.planned(ids);
		Map<EntryId, List<Sentence>> otherwise = this.required.otherwise(events, entries);
		return entries.stream()
			.map((entry) -> checkIn(entry, Objects.requireNonNull(byId.get(entry.event())),
					Objects.requireNonNull(rosters.get(entry.id())), seen, contacts.getOrDefault(entry.id(), List.of()),
					new Handed(music.getOrDefault(entry.id(), Set.of()), plans.getOrDefault(entry.id(), Set.of()),
							otherwise.getOrDefault(entry.id(), List.of()), kept)))
			.sorted(Comparator.comparing((team) -> team.entry().team().name(), String.CASE_INSENSITIVE_ORDER))
			.toList();
	}

	private static CheckIn checkIn(EntryView entry, EventView event, RosterView roster,
			Map<RosterView.PlaceId, ArrivalNote> seen, List<ContactView> contacts, Handed handed) {
		List<SegmentView> held = event.held().segments();
		return new CheckIn(entry, event,
				roster.present().stream().map((place) -> person(place, seen.get(place.id()))).toList(),
				held.stream()
					.filter((segment) -> handed.kept().contains(segment.id()) && !handed.music().contains(segment.id()))
					.toList(),
				held.stream()
					.filter((segment) -> event.hasTechnicalPanel() && !handed.plans().contains(segment.id()))
					.toList(),
				handed.otherwise()
					.stream()
					.filter((one) -> !event.hasTechnicalPanel() || !one.key().equals(RequiredElements.NOTHING_PLANNED))
					.toList(),
				contacts.stream().anyMatch((contact) -> contact.kind() == ContactView.Kind.EMERGENCY));
	}

	private static CheckIn.Person person(RosterView.Place place, @Nullable ArrivalNote note) {
		return new CheckIn.Person(place, (note != null && note.isHere()) ? note.seen() : null);
	}

	/** The last word on each place. */
	private Map<RosterView.PlaceId, ArrivalNote> last(Collection<EntryId> entries) {
		Map<RosterView.PlaceId, ArrivalNote> last = new HashMap<>();
		this.notes.findByEntryInOrderByNumber(entries.stream().map(EntryId::value).toList())
			.forEach((note) -> last.put(note.place(), note));
		return last;
	}

	private Map<EntryId, Set<SegmentId>> music(List<EventView> events) {
		List<SegmentId> segments = events.stream()
			.flatMap((event) -> event.segments().stream())
			.map(SegmentView::id)
			.toList();
		Map<EntryId, Set<SegmentId>> music = new HashMap<>();
		this.music.ofSegments(segments)
			.stream()
			.filter((one) -> !one.isMissing())
			.forEach((MusicView one) -> music.computeIfAbsent(one.entry(), (entry) -> new HashSet<>())
				.add(one.segment()));
		return music;
	}

	/**
	 * The segments for which a team has handed in music, and a plan.
	 *
	 * @param otherwise what of the plans is otherwise than asked
	 * @param kept those for which any team has: where nobody has, music is not kept here
	 */
	private record Handed(Set<SegmentId> music, Set<SegmentId> plans, List<Sentence> otherwise, Set<SegmentId> kept) {
	}

}
