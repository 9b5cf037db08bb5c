package rimebook.commentary;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.ClubView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.entries.TeamView;
import rimebook.live.ToldSegment;
import rimebook.published.Standing;
import rimebook.tabulation.SegmentKind;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

/** What is read aloud, in every state of a segment and in three languages. */
class AnnouncementTests {

	private static final Locale FINNISH = Locale.forLanguageTag("fi");

	private static final EventId ID = new EventId(new UUID(1, 1));

	private static final SegmentView SEGMENT = new SegmentView(new SegmentId(new UUID(1, 2)), ID, 1, "free-skating",
			CompetitionFixtures.aFree(), null);

	private static final EventView EVENT = new EventView(ID,
			new EventView.Listing(new CompetitionId(new UUID(1, 3)), 1, "junior", "Junior"),
			DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3), List.of(SEGMENT), null, 0);

	private static final TeamCard PINE = card(4, "Pine", "PAIN", 16, "Winter Harbour");

	private static final TeamCard ALDER = card(5, "Alder", "", null, "");

	private static final TeamCard BIRCH = card(6, "Birch", "", null, "");

	@Test
	void aTeamIsIntroducedWithAllThatIsKnownOfIt() {
		Announcement said = Announcement.of(onIce(PINE, false));
		assertThat(in(said.introduction(), Locale.ENGLISH)).containsExactly(
				"On the ice now, number 4: PAIN, from Ice Club, Fjellby.", "There are sixteen skaters on the ice.",
				"The music: Winter Harbour.", "Short programme: 2nd of 9.");
		assertThat(in(said.introduction(), Locale.FRENCH)).containsExactly(
				"Sur la glace, numéro 4 : PAIN, de Ice Club, Fjellby.", "Sur la glace : seize patineuses et patineurs.",
				"La musique : Winter Harbour.", "Short programme : 2e sur 9.");
		assertThat(in(said.introduction(), FINNISH)).containsExactly(
				"Nyt jäällä numero 4: PAIN, seura Ice Club, Fjellby.", "Jäällä on kuusitoista luistelijaa.",
				"Musiikki: Winter Harbour.", "Short programme: 2. sija, joukkueita 9.");
	}

	@Test
	void whatIsNotKnownIsNotSaid() {
		assertThat(in(Announcement.introduction(ALDER), Locale.ENGLISH))
			.containsExactly("Number 5: Alder, from Ice Club, Fjellby.", "Short programme: 2nd of 9.");
	}

	@Test
	void anInterruptedTeamIsNotIntroducedAgain() {
		assertThat(in(Announcement.of(onIce(PINE, true)).introduction(), Locale.ENGLISH))
			.containsExactly("The performance of PAIN is interrupted. Please stay seated.");
		assertThat(in(Announcement.of(onIce(PINE, true)).introduction(), FINNISH))
			.containsExactly("Joukkueen PAIN ohjelma on keskeytetty. Pysykää paikoillanne.");
	}

	@Test
	void bothRowsOfMarksAreReadOut() {
		GivenMarks marks = GivenMarks.of(
				row(List.of(new Standing.Card(510, 520, "1"), new Standing.Card(490, 560, "2"))), standing(2),
				SegmentKind.FREE);
		Announcement said = Announcement.of(result("", marks, Sentence.of("headline.in.alone.segment", "Pine")));
		assertThat(in(said.result(), Locale.ENGLISH)).containsExactly("The marks of PAIN.",
				"For technical merit: 5.1, 4.9.", "For presentation: 5.2, 5.6.",
				"Pine is the first with a place in the segment.");
		assertThat(in(said.result(), Locale.FRENCH)).contains("Pour le mérite technique : 5,1, 4,9.");
		assertThat(in(said.result(), FINNISH)).contains("Teknisestä ansiosta: 5,1, 4,9.");
		assertThat(marks.lines()).extracting(GivenMarks.Line::high, GivenMarks.Line::low, GivenMarks.Line::spread)
			.containsExactly(tuple(510, 490, 20), tuple(560, 520, 40));
	}

	@Test
	void pointsAreReadOutWithWhatTheyAreMadeOf() {
		Standing.Score score = new Standing.Score(6513, 3686, 3000, 2927, 100, List.of(), List.of(), List.of());
		GivenMarks marks = new GivenMarks(List.of(1), List.of(), List.of(), score);
		Announcement said = Announcement.of(result("", marks, Sentence.NONE));
		assertThat(in(said.result(), Locale.ENGLISH)).containsExactly(
				"The score of PAIN: 65.13 points, 36.86 for the elements and 29.27 for the components, less 1.00 in deductions.");
		assertThat(in(said.result(), Locale.FRENCH)).containsExactly(
				"Les points de PAIN : 65,13, dont 36,86 pour les éléments et 29,27 pour les composantes, moins 1,00 de déductions.");
	}

	@Test
	void aTeamWithoutMarksIsSaidToHaveNone() {
		GivenMarks none = GivenMarks.of(row(List.of()), standing(2), SegmentKind.FREE);
		assertThat(none.isEmpty()).isTrue();
		assertThat(in(Announcement.of(result("not-finished", none, Sentence.NONE)).result(), Locale.ENGLISH))
			.containsExactly("PAIN did not finish.");
		assertThat(in(Announcement.of(result("disqualified", none, Sentence.NONE)).result(), FINNISH))
			.containsExactly("PAIN on hylätty.");
	}

	@Test
	void whoComesNextIsSaidInOrder() {
		Announcement said = Announcement.of(between(List.of(ALDER, BIRCH, PINE)));
		assertThat(said.introduction()).isEmpty();
		assertThat(in(said.next(), Locale.ENGLISH)).containsExactly("Next on the ice: Alder, from Ice Club, Fjellby.",
				"After that: Birch and PAIN.");
		assertThat(in(said.next(), Locale.FRENCH)).contains("Ensuite : Birch et PAIN.");
		assertThat(in(said.next(), FINNISH)).contains("Sen jälkeen: Birch ja PAIN.");
	}

	@Test
	void theLastTeamIsCalledTheLast() {
		assertThat(in(Announcement.of(onIce(PINE, false)).next(), Locale.ENGLISH))
			.containsExactly("This is the last team of the segment.");
	}

	@Test
	void nothingIsAnnouncedOfWhatIsCancelledButThat() {
		Announcement said = Announcement
			.of(view(told("cancelled", start(PINE), false, "No ice"), PINE, List.of(ALDER), null));
		assertThat(said.introduction()).isEmpty();
		assertThat(said.next()).isEmpty();
		assertThat(in(said.standing(), Locale.ENGLISH)).containsExactly("The starting order is not drawn yet.");
	}

	@Test
	void everyPartHasWordsInEveryLanguage() {
		Announcement said = Announcement.of(onIce(PINE, false));
		assertThat(said.parts()).extracting(Announcement.Part::name)
			.containsExactly("introduction", "standing", "next");
		said.parts()
			.forEach((part) -> part.sentences()
				.forEach((one) -> assertThat(List.of(Locale.FRENCH, FINNISH)).as(one.key()).allMatch(one::isSpokenIn)));
	}

	private static List<String> in(List<Sentence> sentences, Locale language) {
		return sentences.stream().map((one) -> one.in(language)).toList();
	}

	private static TeamCard card(int number, String name, String said, @Nullable Integer skaters, String music) {
		return new TeamCard(new ToldSegment.ToldStart(number, 1, new UUID(2, number).toString(), name, "to-come", null),
				new TeamView(new TeamView.Id(new UUID(3, number)), name,
						new ClubView(new ClubView.Id(new UUID(4, 1)), "Ice Club", "Fjellby"), said),
				new ForTheAnnouncer.Announced(skaters, music, 0), List.of(), List.of(), List.of(),
				List.of(Sentence.of("commentary.before.placed", "Short programme", 2, 9, Sentence.NONE)), List.of());
	}

	private static ToldSegment.ToldStart start(TeamCard card) {
		return card.start();
	}

	private static ToldSegment told(String phase, ToldSegment.@Nullable ToldStart now, boolean interrupted,
			String cancelled) {
		List<ToldSegment.ToldStart> order = IntStream.of(1)
			.mapToObj((one) -> new ToldSegment.ToldStart(one, 1, new UUID(2, one).toString(), "Oak", "skated", null))
			.toList();
		return new ToldSegment(EVENT, SEGMENT, phase, 1, 4, new ToldSegment.ToldIce(now, interrupted, List.of(), order),
				new ToldSegment.ToldNews(Sentence.of("headline.not-drawn"), "", null, Sentence.NONE, cancelled), null,
				null);
	}

	private static CommentaryView view(ToldSegment told, @Nullable TeamCard now, List<TeamCard> next,
			CommentaryView.@Nullable LastMarked last) {
		CompetitionView competition = new CompetitionView(EVENT.competition(), "cup",
				CompetitionFixtures.aCompetition("Cup"), CompetitionState.RUNNING, 0);
		return new CommentaryView(competition, told, now, next, last, List.of(), List.of(),
				CommentaryView.Outlook.NONE);
	}

	private static CommentaryView onIce(TeamCard card, boolean interrupted) {
		return view(told("under-way", start(card), interrupted, ""), card, List.of(), null);
	}

	private static CommentaryView between(List<TeamCard> next) {
		return view(told("under-way", null, false, ""), null, next, null);
	}

	private static CommentaryView result(String status, GivenMarks marks, Sentence changed) {
		return view(told("under-way", null, false, ""), null, List.of(),
				new CommentaryView.LastMarked("e", "Pine", "PAIN", 1, status, marks, changed));
	}

	private static Standing.Row row(List<Standing.Card> cards) {
		return new Standing.Row(1, false, null, "e", "Pine", "Ice Club", 4, "SKATED", cards, List.of(), List.of(), null,
				Sentence.NONE);
	}

	private static Standing standing(int judges) {
		return new Standing("Cup", "Junior", "Free skating", "Book", Sentence.said("Majority"), "MAJORITY", judges, 1,
				4, "technical merit", "presentation", List.of(), List.of());
	}

}
