package rimebook.timetable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.draw.GroupSizes;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.panels.InterestView;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.shared.FoldedName;
import rimebook.timetable.plan.Programme;

/**
 * Reads what a plan is laid out with: segments that take place, their teams in starting
 * order or, before the draw, in order of entry, and who has to be where.
 */
@Component
class ProgrammeReader {

	private final Competitions competitions;

	private final Entries entries;

	private final StartingOrderDraw draw;

	private final Panels panels;

	ProgrammeReader(Competitions competitions, Entries entries, StartingOrderDraw draw, Panels panels) {
		this.competitions = competitions;
		this.entries = entries;
		this.draw = draw;
		this.panels = panels;
	}

	Programme read(CompetitionView competition) {
		List<EventView> events = this.competitions.events(competition.id())
			.stream()
			.filter((event) -> !event.isCancelled())
			.map(EventView::held)
			.toList();
		Map<EventView, List<EntryView>> entered = new LinkedHashMap<>();
		events.forEach((event) -> entered.put(event, this.entries.ofEvent(event.id())));
		List<Programme.Segment> segments = events.stream()
			.flatMap((event) -> event.segments()
				.stream()
				.map((segment) -> segment(event, segment, entered.getOrDefault(event, List.of()))))
			.toList();
		List<EntryView> all = entered.values().stream().flatMap(List::stream).filter(EntryView::isEntered).toList();
		return new Programme(competition.zone(), segments, people(events, all, competition.facts().firstDay()));
	}

	private Programme.Segment segment(EventView event, SegmentView segment, List<EntryView> entries) {
		Optional<StartingOrderView> order = this.draw.ofSegment(segment.id());
		return new Programme.Segment(segment.id().value(), new Programme.Named(event.id().value(), event.name()),
				segment.name(), segment.facts().programmeSeconds(), event.isJudgedByPoints(), order.isPresent(),
				order.map((drawn) -> drawn(drawn, entries)).orElseGet(() -> undrawn(segment, entries)));
	}

	/** A team that withdrew since keeps its time: the others come when it was said. */
	private static List<Programme.Team> drawn(StartingOrderView order, List<EntryView> entries) {
		Map<EntryId, EntryView> byId = entries.stream().collect(Collectors.toMap(EntryView::id, Function.identity()));
		return order.starts()
			.stream()
			.flatMap((start) -> Stream.ofNullable(byId.get(start.entry()))
				.map((entry) -> team(entry, start.number(), start.group())))
			.toList();
	}

	private List<Programme.Team> undrawn(SegmentView segment, List<EntryView> entries) {
		List<EntryView> field = entries.stream()
			.filter(EntryView::isEntered)
			.sorted(Comparator.comparing((EntryView entry) -> entry.acceptance().enteredAt())
				.thenComparing((entry) -> entry.team().name()))
			.toList();
		List<Programme.Team> teams = new ArrayList<>();
		if (field.isEmpty()) {
			return teams;
		}
		List<Integer> sizes = GroupSizes.of(field.size(), this.draw.offer(segment.id()).groupMaximum());
		for (int group = 1; group <= sizes.size(); group++) {
			for (int at = 0; at < sizes.get(group - 1); at++) {
				teams.add(team(field.get(teams.size()), 0, group));
			}
		}
		return teams;
	}

	private static Programme.Team team(EntryView entry, int number, int group) {
		return new Programme.Team(entry.id().value(), entry.team().name(), entry.team().club().name(), number, group);
	}

	/** Everybody on a panel, with the teams that they declared to coach. */
	private List<Programme.Person> people(List<EventView> events, List<EntryView> entries, LocalDate day) {
		Map<OfficialView.Id, OfficialView> officials = new LinkedHashMap<>();
		Map<OfficialView.Id, Set<UUID>> seated = new LinkedHashMap<>();
		events.forEach((event) -> this.panels.seated(event)
			.stream()
			.flatMap((seat) -> Stream.ofNullable(seat.official()))
			.forEach((official) -> {
				officials.put(official.id(), official);
				seated.computeIfAbsent(official.id(), (absent) -> new HashSet<>()).add(event.id().value());
			}));
		return officials.values()
			.stream()
			.map((official) -> new Programme.Person(official.name(), seated.getOrDefault(official.id(), Set.of()),
					coached(official, entries, day)))
			.toList();
	}

	private Set<UUID> coached(OfficialView official, List<EntryView> entries, LocalDate day) {
		List<String> teams = this.panels.interests(official.id())
			.stream()
			.filter((bond) -> bond.kind() == InterestView.Kind.COACH)
			.filter((bond) -> bond.lastDay() == null || !bond.lastDay().isBefore(day))
			.map(InterestView::team)
			.toList();
		return entries.stream()
			.filter((entry) -> teams.stream().anyMatch((team) -> FoldedName.isSame(team, entry.team().name())))
			.map((entry) -> entry.id().value())
			.collect(Collectors.toSet());
	}

}
