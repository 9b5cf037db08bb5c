package rimebook.documents;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import rimebook.timetable.TimetableVersion;
import rimebook.timetable.TimetableVersions;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/** What is printed before anybody skates: teams, starting orders, the panel. */
final class FieldSheets {

	private FieldSheets() {
	}

	/** The teams of an event. */
	@Component
	static class EntryList implements DocumentSource {

		private final Subjects subjects;

		private final Entries entries;

		private final AsOfNow now;

		EntryList(Subjects subjects, Entries entries, AsOfNow now) {
			this.subjects = subjects;
			this.entries = entries;
			this.now = now;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.ENTRY_LIST;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return this.entries.ofEvent(event.id()).isEmpty() ? List.of()
					: List.of(DocumentRef.of(kind(), event.id(), 0));
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			List<EntryView> entries = this.entries.ofEvent(ref.event());
			return this.now.of(this.subjects.of(ref.event()),
					new Teams(entries.stream()
						.map(Team::of)
						.sorted(Comparator.comparing(Team::name, String.CASE_INSENSITIVE_ORDER))
						.toList()),
					Team.things(entries));
		}

	}

	/** The starting order in force. */
	@Component
	static class StartingOrderList implements DocumentSource {

		private final Subjects subjects;

		private final StartingOrderDraw draw;

		private final Entries entries;

		private final TimetableVersions timetables;

		private final AsOfNow now;

		StartingOrderList(Subjects subjects, StartingOrderDraw draw, Entries entries, TimetableVersions timetables,
				AsOfNow now) {
			this.timetables = timetables;
			this.subjects = subjects;
			this.draw = draw;
			this.entries = entries;
			this.now = now;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.STARTING_ORDER;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return event.segments()
				.stream()
				.map(SegmentView::id)
				.filter((segment) -> this.draw.ofSegment(segment).isPresent())
				.map((segment) -> DocumentRef.of(kind(), segment, 0))
				.toList();
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			DocumentContent.Subject at = this.subjects.of(ref.segment());
			StartingOrderView order = this.draw.ofSegment(ref.segment())
				.orElseThrow(() -> NotFoundException.of("starting-order", ref.subject()));
			Map<EntryId, EntryView> entries = this.entries.ofEvent(at.event().id())
				.stream()
				.collect(Collectors.toMap(EntryView::id, Function.identity()));
			Optional<TimetableVersion> timetable = this.timetables.latest(at.event().competition());
			Map<UUID, Instant> times = timetable.map((version) -> version.timetable().teamTimes(ref.subject()))
				.orElseGet(Map::of);
			return this.now.of(at,
					new Order(order.act().drawnAt(), order.seed(), order.starts()
						.stream()
						.map((start) -> new Start(start.number(), start.group(), times.get(start.entry().value()),
								Optional.ofNullable(entries.get(start.entry())).map(Team::of).orElse(null)))
						.toList(), timetable.map(TimetableVersion::number).orElse(0)),
					Stream.concat(Team.things(entries.values()),
							timetable.map((version) -> version.competition().value()).stream()));
		}

	}

	/** Who sits on the panel now. */
	@Component
	static class PanelList implements DocumentSource {

		private final Subjects subjects;

		private final Panels panels;

		private final AsOfNow now;

		PanelList(Subjects subjects, Panels panels, AsOfNow now) {
			this.subjects = subjects;
			this.panels = panels;
			this.now = now;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.PANEL;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return Official.of(this.panels.seated(event)).isEmpty() ? List.of()
					: List.of(DocumentRef.of(kind(), event.id(), 0));
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			DocumentContent.Subject at = this.subjects.of(ref.event());
			List<SeatView> seats = this.panels.seated(at.event());
			return this.now.of(at, new Panel(Official.of(seats)), Official.things(seats));
		}

	}

	record Teams(List<Team> teams) {

		/** How many take part. */
		public long entered() {
			return this.teams.stream().filter((team) -> !team.withdrawn()).count();
		}

	}

	record Team(String name, String club, String town, boolean late, boolean withdrawn) {

		static Team of(EntryView entry) {
			return new Team(entry.team().name(), entry.team().club().name(), entry.team().club().town(), entry.isLate(),
					!entry.isEntered());
		}

		/** What is told of these: the entries, their teams and clubs. */
		static Stream<UUID> things(Collection<EntryView> entries) {
			return entries.stream()
				.flatMap((entry) -> Stream.of(entry.id().value(), entry.team().id().value(),
						entry.team().club().id().value()));
		}

	}

	/**
	 * @param seed the text that decided the draw
	 * @param timetable the version of the timetable that its times are from, 0 before one
	 * is published
	 */
	record Order(Instant drawnAt, String seed, List<Start> starts, int timetable) {

		/** The numbers of the warm-up groups, in their order. */
		public List<Integer> groups() {
			return this.starts.stream().map(Start::group).distinct().toList();
		}

		/** Who starts in a group. */
		public List<Start> of(int group) {
			return this.starts.stream().filter((start) -> start.group() == group).toList();
		}

	}

	/**
	 * @param at when the published timetable has it on the ice, {@code null} where it has
	 * not
	 * @param team {@code null} where its entry is no longer there
	 */
	record Start(int number, int group, @Nullable Instant at, @Nullable Team team) {
	}

	record Panel(List<Official> officials) {
	}

	record Official(Sentence seat, String name, String club, String qualification) {

		/** Who has a seat, in the order of the seats. */
		static List<Official> of(List<SeatView> seats) {
			return seats.stream().flatMap((seat) -> of(seat).stream()).toList();
		}

		private static Optional<Official> of(SeatView seat) {
			return Optional.ofNullable(seat.official())
				.map((official) -> new Official(seat.spoken(), official.name(), official.club(),
						official.qualification()));
		}

		/** What is told of these: the seats and who sits on them. */
		static Stream<UUID> things(List<SeatView> seats) {
			return seats.stream()
				.flatMap((seat) -> Stream.concat(Stream.of(seat.id().value()),
						Stream.ofNullable(seat.official()).map((official) -> official.id().value())));
		}

	}

}
