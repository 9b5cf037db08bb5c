package rimebook.live;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.DrawMethod;
import rimebook.draw.DrawTicket;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Figures;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.wording.Sentence;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.will;

/**
 * A small competition for the pages to show: one event of twelve teams and seven judges,
 * its short programme official, its free skating moved on by the test. It stands in for
 * the modules that the public side reads.
 */
class Stage {

	static final String SLUG = "fjord-days";

	static final Instant NOON = Instant.parse("2026-02-14T10:00:00Z");

	/** As it is out of the box, but with few streams, on any machine. */
	static final LiveSettings SETTINGS = new LiveSettings(Duration.ofSeconds(1), Duration.ofSeconds(5),
			Duration.ofSeconds(15), Duration.ofSeconds(30), Duration.ofMinutes(30), 4, 3, Duration.ofSeconds(5), 2000,
			Duration.ofSeconds(35));

	private static final AtomicInteger STAGES = new AtomicInteger();

	private static final List<String> TEAMS = List.of("Alder", "Birch & Bramble", "Cedar", "Dogwood", "Elm Avenue",
			"Fir Needles of the Upper Valley", "Gorse", "Hazel", "Ivy", "Juniper", "Katsura", "Larch");

	final CompetitionView competition = new CompetitionView(new CompetitionId(id(1)), SLUG,
			new DraftCompetition("Fjord Days", "Tarnholt, North Rink", ZoneId.of("Europe/Helsinki"),
					LocalDate.of(2026, 2, 14), LocalDate.of(2026, 2, 15), "Tarnholt Skating Rules, edition of 2025"),
			CompetitionState.RUNNING, 3);

	final CompetitionView planned = new CompetitionView(new CompetitionId(id(2)), "thaw-days",
			new DraftCompetition("Thaw Days", "Tarnholt", ZoneId.of("Europe/Helsinki"), LocalDate.of(2026, 4, 1),
					LocalDate.of(2026, 4, 1), "Tarnholt Skating Rules, edition of 2025"),
			CompetitionState.PLANNED, 0);

	final SegmentView shortProgramme = segment(21, 1, "short-programme", "Short programme", SegmentKind.SHORT, 50);

	final SegmentView freeSkating = segment(22, 2, "free-skating", "Free skating", SegmentKind.FREE, 100);

	final EventView junior;

	final Map<SegmentId, Run> runs = new HashMap<>();

	final List<ResultVersion> eventVersions = new CopyOnWriteArrayList<>();

	/** Two stages, shown one after the other, never stand at the same count. */
	private final int begin = 1000 * STAGES.incrementAndGet();

	private final List<EntryView> entries = IntStream.range(0, TEAMS.size()).mapToObj(Stage::entry).toList();

	Stage() {
		this(JudgingMethod.MAJORITY);
	}

	Stage(JudgingMethod method) {
		this.junior = new EventView(new EventId(id(11)),
				new EventView.Listing(this.competition.id(), 1, "junior", "Junior"), DraftEvent.Judging.by(method, 7),
				List.of(this.shortProgramme, this.freeSkating), null, 1);
		Run first = new Run(this.shortProgramme, 7);
		IntStream.range(0, TEAMS.size()).forEach((i) -> first.skate());
		first.sign();
		this.runs.put(this.shortProgramme.id(), first);
		this.runs.put(this.freeSkating.id(), new Run(this.freeSkating, 11));
	}

	Run free() {
		return this.runs.get(this.freeSkating.id());
	}

	/**
	 * Let these facades, mocks all, answer from the stage of the moment. This is said
	 * once, before any other thread can ask them: a mock that is asked while it is being
	 * told takes the question for what it is told.
	 */
	static void play(Supplier<Stage> now, Competitions competitions, Entries entries, StartingOrderDraw draw,
			Standings standings) {
		will((call) -> List.of(now.get().planned, now.get().competition)).given(competitions).all();
		will((call) -> now.get().bySlug(call.getArgument(0))).given(competitions).bySlug(anyString());
		will((call) -> now.get().events(call.getArgument(0))).given(competitions).events(any(CompetitionId.class));
		will((call) -> now.get().event(call.getArgument(1))).given(competitions).eventBySlug(any(), anyString());
		will((call) -> now.get().entries).given(entries).ofEvent(any());
		will((call) -> now.get().run(call.getArgument(0)).map(Run::order)).given(draw).ofSegment(any());
		will((call) -> now.get().run(call.getArgument(0)).flatMap(Run::result)).given(standings).result(any());
		will((call) -> now.get().run(call.getArgument(0)).flatMap((run) -> newest(run.versions))).given(standings)
			.latest(any(SegmentId.class));
		will((call) -> now.get().run(call.getArgument(0)).flatMap(Run::lastSkated)).given(standings).lastSkated(any());
		will((call) -> newest(now.get().eventVersions)).given(standings).latest(any(EventId.class));
		will((call) -> now.get().run(call.getArgument(0)).flatMap((run) -> run.version(call.getArgument(1))))
			.given(standings)
			.version(any(SegmentId.class), anyInt());
		will((call) -> now.get().eventVersions.stream()
			.filter((one) -> one.number() == (int) call.getArgument(1))
			.findFirst()).given(standings).version(any(EventId.class), anyInt());
		will((call) -> now.get().run(call.getArgument(0)).map(Run::newestFirst).orElseThrow()).given(standings)
			.versions(any());
	}

	private List<EventView> events(CompetitionId competition) {
		return competition.equals(this.competition.id()) ? List.of(this.junior) : List.of();
	}

	private CompetitionView bySlug(String slug) {
		return List.of(this.planned, this.competition)
			.stream()
			.filter((competition) -> competition.slug().equals(slug))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("competition", slug));
	}

	private EventView event(String slug) {
		if (!slug.equals(this.junior.slug())) {
			throw NotFoundException.of("event", slug);
		}
		return this.junior;
	}

	private Optional<Run> run(SegmentId segment) {
		return Optional.ofNullable(this.runs.get(segment));
	}

	private static Optional<ResultVersion> newest(List<ResultVersion> versions) {
		return versions.isEmpty() ? Optional.empty() : Optional.of(versions.get(versions.size() - 1));
	}

	private SegmentView segment(int id, int position, String slug, String name, SegmentKind kind, int factor) {
		return new SegmentView(new SegmentId(id(id)), new EventId(id(11)), position, slug,
				new DraftEvent.DraftSegment(name, kind, factor, 180, 10), null);
	}

	private static EntryView entry(int i) {
		ClubView club = new ClubView(new ClubView.Id(id(200 + i)), "Club " + "ABCDEFGHIJKL".charAt(i), "Tarnholt");
		return new EntryView(new EntryId(id(100 + i)), new EventId(id(11)),
				new TeamView(new TeamView.Id(id(300 + i)), TEAMS.get(i), club, ""), new EntryView.Acceptance(NOON, ""),
				null, 0);
	}

	static UUID id(int number) {
		return new UUID(0x7000L, 0x8000_0000_0000_0000L | number);
	}

	/** One segment on the day. */
	final class Run {

		final SegmentView segment;

		final List<ResultVersion> versions = new CopyOnWriteArrayList<>();

		private final Random random;

		private final List<EntryView> order;

		private final Map<String, EntryCards> closed = new HashMap<>();

		private @Nullable EntryId onIce;

		private SegmentResultView.SegmentResultState state = SegmentResultView.SegmentResultState.RUNNING;

		/**
		 * Moves on last: a part that is made meanwhile is made again, as one is that is
		 * made while the service commits.
		 */
		private volatile int count;

		Run(SegmentView segment, int seed) {
			this.segment = segment;
			this.random = new Random(seed);
			this.order = new ArrayList<>(Stage.this.entries);
			Collections.shuffle(this.order, this.random);
		}

		/** The next team takes the ice. */
		void call() {
			this.onIce = this.order.get(this.closed.size()).id();
			this.count++;
		}

		/** The next team skates and its cards are closed. */
		ResultVersion skate() {
			EntryView entry = this.order.get(this.closed.size());
			return close(EntryCards.skated(entry.id().toString(), cards(strength(entry))),
					ResultVersion.Cause.CARDS_CLOSED, "");
		}

		Optional<String> lastSkated() {
			return this.order.stream()
				.map((entry) -> this.closed.get(entry.id().toString()))
				.filter((cards) -> cards != null && cards.status() == EntryStatus.SKATED)
				.map(EntryCards::entry)
				.reduce((earlier, later) -> later);
		}

		/** The next team does not start. */
		ResultVersion withdraw() {
			EntryView entry = this.order.get(this.closed.size());
			return close(EntryCards.without(entry.id().toString(), EntryStatus.WITHDRAWN), ResultVersion.Cause.STATUS,
					"Illness");
		}

		ResultVersion correct(String note) {
			return publish(ResultVersion.Cause.CORRECTED, note, ResultVersion.ResultState.PROVISIONAL);
		}

		void sign() {
			this.state = SegmentResultView.SegmentResultState.OFFICIAL;
			publish(ResultVersion.Cause.SIGNED, "", ResultVersion.ResultState.OFFICIAL);
		}

		private ResultVersion close(EntryCards cards, ResultVersion.Cause cause, String note) {
			this.closed.put(cards.entry(), cards);
			this.onIce = null;
			return publish(cause, note, ResultVersion.ResultState.PROVISIONAL);
		}

		private int strength(EntryView entry) {
			return 520 - 15 * Stage.this.entries.indexOf(entry);
		}

		private List<CardMarks> cards(int strength) {
			return IntStream.range(0, 7).mapToObj((judge) -> new CardMarks(mark(strength), mark(strength))).toList();
		}

		private int mark(int strength) {
			return Math.min(600, (strength + this.random.nextInt(70)) / 10 * 10);
		}

		private ResultVersion publish(ResultVersion.Cause cause, String note, ResultVersion.ResultState state) {
			List<Standing.Row> rows = PlacementTabulation
				.ofCards(Stage.this.junior.rules(this.segment.kind()), List.copyOf(this.closed.values()))
				.rows()
				.stream()
				.map(this::row)
				.toList();
			Standing standing = standing(this.segment.name(), rows, List.of(), outlook(rows));
			ResultVersion version = new ResultVersion(
					new ResultVersion.Key(ResultVersion.Scope.SEGMENT, this.segment.id().value(),
							this.versions.size() + 1),
					state, new ResultVersion.Reason(cause, Sentence.said(note)),
					NOON.plusSeconds(480L * (this.versions.size() + 1)), "0".repeat(64), standing);
			this.versions.add(version);
			combine(version);
			this.count++;
			return version;
		}

		/**
		 * The totals are made up: the public side adds nothing, it shows what was
		 * published.
		 */
		private void combine(ResultVersion version) {
			List<Standing.Row> rows = version.standing().rows().stream().map(this::combined).toList();
			Standing standing = standing("", rows, List.of(new Standing.SegmentColumn("Short programme", 50),
					new Standing.SegmentColumn("Free skating", 100)), null);
			Stage.this.eventVersions.add(new ResultVersion(
					new ResultVersion.Key(ResultVersion.Scope.EVENT, Stage.this.junior.id().value(),
							Stage.this.eventVersions.size() + 1),
					version.state(), version.reason(), version.publishedAt(), "1".repeat(64), standing));
		}

		private Standing.Row combined(Standing.Row row) {
			boolean free = this.segment == Stage.this.freeSkating;
			Integer place = row.place();
			List<@Nullable Integer> places = new ArrayList<>();
			places.add(free ? Integer.valueOf(row.startNumber()) : place);
			places.add(free ? place : null);
			return new Standing.Row(place, row.shared(), row.previousPlace(), row.entry(), row.team(), row.club(), 0,
					row.status(), List.of(), List.of(), places,
					(place != null) ? (free ? row.startNumber() * 50 + place * 100 : place * 50) : null, row.why());
		}

		/** What nobody has computed, in the shapes that there are. */
		private Standing.@Nullable Outlook outlook(List<Standing.Row> rows) {
			if (this.closed.size() == this.order.size()) {
				return null;
			}
			List<Standing.Outlook.Chance> chances = new ArrayList<>();
			for (EntryView entry : this.order) {
				Standing.Outlook.Range range = new Standing.Outlook.Range(1 + chances.size() / 2,
						12 - chances.size() / 3, chances.size() % 2 == 0);
				chances.add(new Standing.Outlook.Chance(entry.id().toString(), entry.team().name(),
						this.closed.containsKey(entry.id().toString()), range, new Standing.Outlook.Range(3, 3, true)));
			}
			return new Standing.Outlook(chances,
					List.of(Sentence.of("possible.need.win-event", 1, Sentence.NONE, rows.get(0).team(),
							Sentence.of("possible.need.needs", Sentence.of("possible.or-better", 2)), Sentence.NONE)),
					List.of(Sentence.said("Nobody came between them.")));
		}

		private Standing standing(String segment, List<Standing.Row> rows, List<Standing.SegmentColumn> columns,
				Standing.@Nullable Outlook outlook) {
			return new Standing(Stage.this.competition.name(), Stage.this.junior.name(), segment,
					Stage.this.competition.facts().rulebook(),
					Sentence.of("figure.series.semicolon", Sentence.of("rules.majority", 7),
							Sentence.of("rules.by-second-mark")),
					Stage.this.junior.judging().method().name(), 7, this.closed.size(), this.order.size(),
					"Technical Merit", "Presentation", columns, rows, outlook, null, null, null);
		}

		private Standing.Row row(PlacedEntry placed) {
			EntryView entry = find(placed.entry());
			return new Standing.Row(placed.place(), placed.shared(), previous(placed.entry()), placed.entry(),
					entry.team().name(), entry.team().club().name(), this.order.indexOf(entry) + 1,
					placed.status().name(), cards(placed), figures(placed), List.of(), null,
					placed.why((id) -> find(id).team().name()));
		}

		private EntryView find(String id) {
			return this.order.stream().filter((entry) -> entry.id().toString().equals(id)).findFirst().orElseThrow();
		}

		private @Nullable Integer previous(String entry) {
			return newest(this.versions).stream()
				.flatMap((version) -> version.standing().rows().stream())
				.filter((row) -> row.entry().equals(entry))
				.findFirst()
				.map(Standing.Row::place)
				.orElse(null);
		}

		private static List<Standing.Card> cards(PlacedEntry placed) {
			return IntStream.range(0, placed.cards().size())
				.mapToObj((i) -> new Standing.Card(placed.cards().get(i).first(), placed.cards().get(i).second(),
						Hundredths.plain(placed.ordinals().get(i))))
				.toList();
		}

		private static List<Standing.Figure> figures(PlacedEntry placed) {
			return (placed.figures() == null) ? List.of()
					: placed.figures().measures().stream().map(Run::figure).toList();
		}

		private static Standing.Figure figure(Figures.Measure measure) {
			return new Standing.Figure(measure.criterion().name().toLowerCase(Locale.ROOT).replace('_', '-'),
					switch (measure.criterion()) {
						case SIZE_OF_MAJORITY, JUDGES_IN_FAVOUR -> String.valueOf(measure.value());
						default -> Hundredths.plain(measure.value());
					});
		}

		StartingOrderView order() {
			List<StartingOrderView.Start> starts = IntStream.range(0, this.order.size()).mapToObj((i) -> {
				EntryView entry = this.order.get(i);
				DrawTicket ticket = DrawTicket.of("a-seed-for-all", this.segment.name(), entry.team().name(),
						entry.team().club().name());
				return new StartingOrderView.Start(i + 1, i / 6 + 1, entry.id(), ticket.hex(), ticket.text());
			}).toList();
			return new StartingOrderView(this.segment.id(), 1,
					new StartingOrderView.Procedure(DrawMethod.GROUPS_FROM_STANDING, "a-seed-for-all", 6),
					new StartingOrderView.Act(NOON, "Somebody", ""), starts);
		}

		Optional<SegmentResultView> result() {
			SegmentResultView.Posted posted = (this.state == SegmentResultView.SegmentResultState.OFFICIAL)
					? new SegmentResultView.Posted(NOON, "Poster") : null;
			return (this.count == 0) ? Optional.empty()
					: Optional.of(new SegmentResultView(this.segment.id(), this.state,
							new SegmentResultView.Ice(this.onIce, false), posted,
							new SegmentResultView.Signatures(new SegmentResultView.Signature("Referee", null),
									new SegmentResultView.Signature("Accountant", null)),
							this.count, Stage.this.begin + this.count));
		}

		Optional<ResultVersion> version(int number) {
			return this.versions.stream().filter((version) -> version.number() == number).findFirst();
		}

		List<ResultVersion> newestFirst() {
			List<ResultVersion> versions = new ArrayList<>(this.versions);
			Collections.reverse(versions);
			return versions;
		}

	}

}
