package rimebook.crawl;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;

import rimebook.accounts.People;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentView;
import rimebook.documents.DocumentKind;
import rimebook.documents.PaperBundles;
import rimebook.documents.PaperSize;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.ClubContacts;
import rimebook.entries.ClubView;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.OneClub;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.letters.LetterKind;
import rimebook.music.Music;
import rimebook.music.MusicView;
import rimebook.music.SpokenNames;
import rimebook.music.Tones;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.Amendment;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarksAmendment;
import rimebook.points.LineAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.SmallCompetition;
import rimebook.timetable.PlanView;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Programmed;

import static org.awaitility.Awaitility.await;

/** Builds a small competition in each state, and says what stands there. */
final class CrawledPlaces {

	private static final Map<String, DraftEvent> METHODS = Map.of("placement", placement(), "points",
			CompetitionFixtures.aPointsEvent("Senior", 3));

	private final ApplicationContext context;

	private final List<CrawledPlace> places = new ArrayList<>();

	CrawledPlaces(ApplicationContext context) {
		this.context = context;
	}

	private static DraftEvent placement() {
		List<DraftEvent.DraftSegment> free = List.of(CompetitionFixtures.aFree());
		return new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3), free).signedAtOnce();
	}

	/** Both ways of judging in one of the states of a day. */
	List<CrawledPlace> in(String state) {
		METHODS.forEach((method, draft) -> add(method + ", " + state, draft, 2,
				Objects.requireNonNull(StatesOfADay.all().get(state))));
		return this.places;
	}

	List<CrawledPlace> build() {
		METHODS.forEach((method, draft) -> {
			for (CompetitionState state : List.of(CompetitionState.PLANNED, CompetitionState.ENTRIES_OPEN,
					CompetitionState.ENTRIES_CLOSED)) {
				add(method + ", " + state.inWords(), SmallCompetition.upTo(state, this.context, 1, draft));
			}
			StatesOfADay.all()
				.forEach((state, arrive) -> add(method + ", " + state, draft, state.equals("nobody is left") ? 3 : 2,
						arrive));
			add(method + ", empty event", draft, 0, (day) -> {
			});
			add(method + ", one team, on the ice", draft, 1, (day) -> {
				day.small.open(1);
				day.call();
			});
			add(method + ", one team, final", draft, 1, StatesOfADay::finish);
			add(method + ", drawn again", draft, 2, this::drawAgain);
			add(method + ", protest and correction", draft, 2, this::protest);
			add(method + ", protest upheld and corrected", draft, 2, this::uphold);
		});
		twoSegments();
		lateTeam();
		return this.places;
	}

	/** A team without a number, of a club that was written down twice. */
	private void lateTeam() {
		SmallCompetition small = SmallCompetition.running(this.context, 1, placement());
		small.draw(1);
		ClubView one = enter(small, "Crawled Blades", "A first late team");
		ClubView other = enter(small, "Crawled Harbour", "A second late team");
		the(OneClub.class).merge(new OneClub.Merge(one.id(), the(Renaming.class).club(one.id()).version(), other.id(),
				the(Renaming.class).club(other.id()).version(), "The short name."), SmallCompetition.SECRETARY);
		the(ClubContacts.class).set(other.id(), new ClubContacts.Reach("office@harbour.example", "", -1),
				SmallCompetition.SECRETARY);
		TeamView.Id team = small.entries().get(0).team().id();
		the(SpokenNames.class).record(new SpokenNames.Recording(team, "", new ByteArrayResource(Tones.wav(1500, 440)),
				Tones.wav(1500, 440).length), SmallCompetition.SECRETARY);
		add("placement, late teams", small);
	}

	private ClubView enter(SmallCompetition small, String club, String team) {
		return the(Entries.class)
			.enter(new EnterTeam(small.event().id(), club, "Skerrywick", team, "", "Lost form."),
					SmallCompetition.SECRETARY)
			.team()
			.club();
	}

	private void twoSegments() {
		SmallCompetition small = SmallCompetition.running(this.context, 2, 3);
		EntryId first = small.entries().get(0).id();
		CrawledRoster.write(this.context, small, small.entries().get(0));
		byte[] file = Tones.wav(1000, 440);
		the(Music.class).handIn(
				new Music.HandIn(first, small.segment(1), new ByteArrayResource(file), file.length, "tone.wav", ""),
				SmallCompetition.SECRETARY);
		small.open(1);
		small.skateRest(1);
		small.open(2);
		small.callNext(2);
		add("placement, second segment on the ice", small);
		String bundle = bundle(small);
		this.places.stream()
			.filter((place) -> place.ids().get("event").contains(small.event().id().toString()))
			.forEach((place) -> {
				place.ids().put("bundle", List.of(bundle));
				place.ids().put("bound", place.ids().get("event"));
			});
	}

	/** Making all documents takes its time: one competition stands for all. */
	private String bundle(SmallCompetition small) {
		PaperBundles bundles = the(PaperBundles.class);
		UUID bundle = bundles.ask(small.competition().id(), PaperSize.A4, Locale.ENGLISH, SmallCompetition.SECRETARY);
		await().atMost(Duration.ofMinutes(2)).until(() -> bundles.bundle(bundle).isReady());
		return bundle.toString();
	}

	private void add(String name, DraftEvent draft, int teams, Consumer<CrawledDay> arrive) {
		SmallCompetition small = SmallCompetition.running(this.context, teams, draft);
		plan(small);
		arrive.accept(new CrawledDay(small, this.context));
		add(name, small);
	}

	/** What everybody reads, changed once, and a plan that says otherwise. */
	private void plan(SmallCompetition small) {
		Timetables timetables = the(Timetables.class);
		TimetableVersions versions = the(TimetableVersions.class);
		CompetitionId id = small.competition().id();
		PlanView plan = timetables.fill(id, 0, SmallCompetition.SECRETARY);
		versions.publish(id, 1, "", SmallCompetition.SECRETARY);
		timetables.move(id, 1, plan.plan().blocks().get(0).id(), 2, SmallCompetition.REFEREE);
		versions.publish(id, 2, "The doors open later.", SmallCompetition.SECRETARY);
		timetables.move(id, 2, plan.plan().blocks().get(0).id(), -2, SmallCompetition.REFEREE);
	}

	private void drawAgain(CrawledDay day) {
		day.small.draw(1);
		the(StartingOrderDraw.class).draw(new StartingOrderDraw.Order(day.small.segment(1), DrawMethod.WHOLE_FIELD,
				"another seed", 4, "The wrong list was read out."), SmallCompetition.REFEREE);
	}

	private void protest(CrawledDay day) {
		day.skateAll();
		day.post();
		day.the(Protests.class)
			.file(new Protests.FileProtest(day.small.segment(1), new ProtestView.Claim(day.small.entries().get(0).id(),
					ProtestView.ProtestCategory.CALCULATION, "A sum is wrong.", 0), "Mira Sund", null),
					SmallCompetition.ACCOUNTANT);
		propose(day);
	}

	private void propose(CrawledDay day) {
		PerformanceView first = day.small.performances(1).get(0);
		Corrections corrections = day.the(Corrections.class);
		if (day.isPoints()) {
			corrections.propose(
					new Corrections.ProposeCorrection(new Amendment.SupposedChange<>(first.id(),
							day.small.seats().get(0).id(), new LineAmendment(1, "", 3)), "Typed one key off."),
					SmallCompetition.ACCOUNTANT);
		}
		else {
			corrections.propose(new Corrections.ProposeCorrection(
					MarksAmendment.on(first.id(), day.small.seats().get(0).id(), new CardMarks(500, 500)),
					"Typed one key off."), SmallCompetition.ACCOUNTANT);
		}
	}

	private void uphold(CrawledDay day) {
		protest(day);
		day.the(Protests.class)
			.ofSegment(day.small.segment(1))
			.forEach((protest) -> day.the(Protests.class)
				.decide(protest.id(), protest.version(), true, "It is so.", SmallCompetition.REFEREE));
		day.the(Corrections.class)
			.ofSegment(day.small.segment(1))
			.forEach((correction) -> day.the(Corrections.class)
				.approve(correction.id(), correction.version(), SmallCompetition.REFEREE));
	}

	private void add(String name, SmallCompetition small) {
		small.entries().stream().limit(1).forEach((entry) -> {
			CrawledRoster.write(this.context, small, entry);
			CrawledFees.write(this.context, small, entry);
		});
		CrawledLetters.write(this.context, small);
		small.event()
			.segments()
			.forEach((segment) -> this.places
				.add(new CrawledPlace(name, event(small), ids(small, segment), slugs(small, segment))));
	}

	/** What pages of a whole event can depend on; not who is on the ice. */
	private String event(SmallCompetition small) {
		return small.event().judging().method() + ", " + small.competition().state() + ", " + small.entries().size()
				+ ", " + the(Rulings.class).ofCompetition(small.competition().id()).size() + ", "
				+ small.event().segments().stream().map((segment) -> stage(segment)).toList();
	}

	private String stage(SegmentView segment) {
		return the(StartingOrderDraw.class).ofSegment(segment.id()).isPresent() + " "
				+ the(Standings.class).result(segment.id()).map(SegmentResultView::state);
	}

	private Map<String, List<String>> ids(SmallCompetition small, SegmentView segment) {
		Map<String, List<String>> ids = new HashMap<>();
		ids.put("competition", List.of(small.competition().id().toString()));
		ids.put("event", List.of(small.event().id().toString()));
		ids.put("segment", List.of(segment.id().toString()));
		ids.put("entry", words(small.entries().stream().limit(1), EntryView::id));
		ids.put("performance", words(small.performances(segment.position()).stream().limit(1), PerformanceView::id));
		ids.put("question",
				words(the(Rulings.class).ofCompetition(small.competition().id()).stream(), QuestionView::id));
		ids.put("protest", words(the(Protests.class).ofSegment(segment.id()).stream(), ProtestView::id));
		ids.put("correction", words(the(Corrections.class).ofSegment(segment.id()).stream(), CorrectionView::id));
		ids.put("seat", words(the(Panels.class).withCard(small.event().id()).stream(), SeatView::id));
		ids.put("team", words(small.entries().stream().limit(1), (entry) -> entry.team().id()));
		ids.put("club", words(small.entries().stream().limit(1), (entry) -> entry.team().club().id()));
		ids.put("official", words(small.seats().stream().limit(1), (seat) -> seat.official().id()));
		ids.put("person", words(the(People.class).all().stream().limit(1), (person) -> person.id().value()));
		ids.put("block", words(the(Timetables.class).plan(small.competition().id()).plan().blocks().stream().limit(1),
				Block::id));
		ids.putAll(CrawledRoster.ids(this.context, small.entries()));
		ids.put("booking", CrawledFees.bookings(this.context, small));
		ids.put("address", List.of("1"));
		ids.put("act", List.of("CANCEL", "RETURN", "REMOVE"));
		ids.put("next", words(Stream.of(CompetitionState.values()), CompetitionState::name));
		ids.put("bundle", List.of());
		ids.put("bound", List.of());
		ids.put("version",
				words(the(Music.class).ofSegments(List.of(segment.id()))
					.stream()
					.flatMap((music) -> music.versions().stream()), MusicView.Version::id));
		ids.put("letterKind", words(Stream.of(LetterKind.values()), LetterKind::name));
		ids.putAll(CrawledLetters.ids(this.context, small.competition().id()));
		ids.put("sheet", List.of(sheet(small, segment)));
		ids.put("what", List.of("element", "deduction"));
		return ids;
	}

	/** One document each, of another kind from place to place. */
	private String sheet(SmallCompetition small, SegmentView segment) {
		DocumentKind kind = DocumentKind.values()[this.places.size() % DocumentKind.values().length];
		boolean ofTheEvent = kind.about() == DocumentKind.About.EVENT;
		return kind.word() + "/" + (ofTheEvent ? small.event().id() : segment.id());
	}

	/** The first and the newest version stand for all. */
	private Map<String, List<String>> slugs(SmallCompetition small, SegmentView segment) {
		int versions = the(Standings.class).versions(segment.id()).size();
		Map<String, List<String>> slugs = new HashMap<>(Map.of("competition", List.of(small.competition().slug()),
				"event", List.of(small.event().slug()), "segment", List.of(segment.slug()), "sheet",
				List.of(sheet(small, segment)), "number",
				words(IntStream.of(1, versions).filter((number) -> number <= versions).distinct().boxed(),
						(number) -> number),
				"day",
				words(the(TimetableVersions.class).latest(small.competition().id())
					.stream()
					.flatMap((version) -> version.timetable().days().stream())
					.limit(1), Programmed.Day::day),
				"entry", words(small.entries().stream().limit(1), EntryView::id), "name", List.of("a"), "one",
				words(small.entries().stream().limit(1), EntryView::id), "other",
				words(small.entries().stream().skip(1).limit(1), EntryView::id)));
		slugs.put("step", List.of("1"));
		slugs.put("surface", List.of("1"));
		return slugs;
	}

	private static <T> List<String> words(Stream<T> things, Function<T, Object> word) {
		return things.map(word).map(Object::toString).toList();
	}

	private <T> T the(Class<T> facade) {
		return this.context.getBean(facade);
	}

}
