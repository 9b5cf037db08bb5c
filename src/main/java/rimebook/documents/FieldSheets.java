package rimebook.documents;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

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

	/** A document without versions, as things stand now. */
	static DocumentContent asOf(Clock clock, DocumentContent.Subject at, Object body) {
		return new DocumentContent(at,
				new DocumentContent.Edition(0, DocumentContent.Trust.AS_OF, clock.instant(), Fingerprint.of(body)),
				Sentence.NONE, body);
	}

	/** The teams of an event. */
	@Component
	static class EntryList implements DocumentSource {

		private final Subjects subjects;

		private final Entries entries;

		private final Clock clock;

		EntryList(Subjects subjects, Entries entries, Clock clock) {
			this.subjects = subjects;
			this.entries = entries;
			this.clock = clock;
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
			return asOf(this.clock, this.subjects.of(ref.event()),
					new Teams(this.entries.ofEvent(ref.event())
						.stream()
						.map(Team::of)
						.sorted(Comparator.comparing(Team::name, String.CASE_INSENSITIVE_ORDER))
						.toList()));
		}

	}

	/** The starting order in force. */
	@Component
	static class StartingOrderList implements DocumentSource {

		private final Subjects subjects;

		private final StartingOrderDraw draw;

		private final Entries entries;

		private final Clock clock;

		StartingOrderList(Subjects subjects, StartingOrderDraw draw, Entries entries, Clock clock) {
			this.subjects = subjects;
			this.draw = draw;
			this.entries = entries;
			this.clock = clock;
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
			return asOf(this.clock, at,
					new Order(order.act().drawnAt(), order.seed(),
							order.starts()
								.stream()
								.map((start) -> new Start(start.number(), start.group(),
										Optional.ofNullable(entries.get(start.entry())).map(Team::of).orElse(null)))
								.toList()));
		}

	}

	/** Who sits on the panel now. */
	@Component
	static class PanelList implements DocumentSource {

		private final Subjects subjects;

		private final Panels panels;

		private final Clock clock;

		PanelList(Subjects subjects, Panels panels, Clock clock) {
			this.subjects = subjects;
			this.panels = panels;
			this.clock = clock;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.PANEL;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return seated(event).isEmpty() ? List.of() : List.of(DocumentRef.of(kind(), event.id(), 0));
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			DocumentContent.Subject at = this.subjects.of(ref.event());
			return asOf(this.clock, at, new Panel(seated(at.event())));
		}

		private List<Official> seated(EventView event) {
			return this.panels.seated(event).stream().flatMap((seat) -> Official.of(seat).stream()).toList();
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

	}

	/**
	 * @param seed the text that decided the draw
	 */
	record Order(Instant drawnAt, String seed, List<Start> starts) {

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
	 * @param team {@code null} where its entry is no longer there
	 */
	record Start(int number, int group, @Nullable Team team) {
	}

	record Panel(List<Official> officials) {
	}

	record Official(Sentence seat, String name, String club, String qualification) {

		static Optional<Official> of(SeatView seat) {
			return Optional.ofNullable(seat.official())
				.map((official) -> new Official(seat.spoken(), official.name(), official.club(),
						official.qualification()));
		}

	}

}
