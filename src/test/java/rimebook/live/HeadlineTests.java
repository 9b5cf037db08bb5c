package rimebook.live;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.competition.EventView;
import rimebook.entries.EntryId;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.tabulation.Hundredths;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/** Everything that the sentence on top can have to say. */
class HeadlineTests {

	private static final Locale FINNISH = Locale.forLanguageTag("fi");

	private final Stage stage = new Stage();

	private final EventView event = this.stage.junior;

	@Test
	void beforeAnybodyHasSkated() {
		assertThat(english(facts(null, false, null, List.of()), null))
			.isEqualTo("The starting order is not drawn yet.");
		assertThat(english(facts(null, true, null, starts(Start.Mark.TO_COME)), null))
			.isEqualTo("The starting order is drawn: 3 teams skate.");
		assertThat(english(facts(null, true, result(null), starts(Start.Mark.TO_COME)), null))
			.isEqualTo("A skates first of 3 teams and has not been called yet.");
		assertThat(english(facts(null, true, result("A"), starts(Start.Mark.ON_ICE)), null))
			.isEqualTo("A is on the ice, the first of 3 teams.");
	}

	@Test
	void theFirstTeamLeadsAlone() {
		ResultVersion whole = version(1, 9, row("A", 1));
		assertThat(english(shown(whole), whole)).isEqualTo("After the first of 9 teams, A leads the event.");
	}

	@Test
	void betweenTeamsTheLeadIsNamedWithTheGap() {
		ResultVersion places = version(5, 9, row("A", 1), row("B", 2), row("C", 2));
		assertThat(english(shown(places), places))
			.isEqualTo("After 5 of 9 teams, A leads the event, ahead of B and C.");
		assertThat(Headline.ofSegment(this.event, shown(places), places).in(Locale.FRENCH))
			.isEqualTo("Après 5 équipes sur 9, A mène l’épreuve, devant B et C.");
		assertThat(Headline.ofSegment(this.event, shown(places), places).in(FINNISH))
			.isEqualTo("5/9 joukkuetta luistellut: sarjan johdossa A, perässä B ja C.");
		ResultVersion points = points(5, 9, List.of(), total("A", 1, 6601), total("B", 2, 6513));
		assertThat(english(shown(points), points)).isEqualTo("After 5 of 9 teams, A leads the event, 0.88 ahead of B.");
	}

	@Test
	void theLeadIsThatOfTheSegmentWhileNothingElseCounts() {
		ResultVersion whole = version(5, 9, row("A", 1), row("B", 2));
		assertThat(Headline.ofSegment(this.event, facts(whole, true, result(null), List.of(), false), whole).english())
			.isEqualTo("After 5 of 9 teams, A leads the segment, ahead of B.");
	}

	@Test
	void aSharedLeadIsSharedInEveryLanguage() {
		ResultVersion whole = version(5, 9, row("A", 1), row("B", 1), row("C", 1), row("D", 4));
		assertThat(english(shown(whole), whole))
			.isEqualTo("After 5 of 9 teams, A, B and C share the lead of the event.");
		assertThat(Headline.ofSegment(this.event, shown(whole), whole).in(Locale.FRENCH))
			.isEqualTo("Après 5 équipes sur 9, A, B et C se partagent la tête de l’épreuve.");
		assertThat(Headline.ofSegment(this.event, shown(whole), whole).in(FINNISH))
			.isEqualTo("5/9 joukkuetta luistellut: sarjan johdossa tasan A, B ja C.");
	}

	@Test
	void withOneTeamLeftItSaysWhatThatOneNeeds() {
		ResultVersion points = points(8, 9, List.of(needed("in-event", 1, 14927), needed("in-event", 2, 14000)),
				total("A", 1, 21000), total("B", 2, 20000));
		assertThat(english(shown(points), points))
			.isEqualTo("With one team left, A leads the event; Z needs 149.27 here to be first.");
		assertThat(Headline.ofSegment(this.event, shown(points), points).in(Locale.FRENCH)).isEqualTo(
				"Alors qu’il reste une équipe, A mène l’épreuve\u00a0; Z a besoin de 149,27 ici pour être première.");
		assertThat(Headline.ofSegment(this.event, shown(points), points).in(FINNISH))
			.isEqualTo("Yksi joukkue jäljellä: sarjan johdossa A; Z tarvitsee tässä 149,27 ollakseen ensimmäinen.");
		ResultVersion two = points(7, 9, List.of(needed("in-event", 1, 14927)), total("A", 1, 21000));
		assertThat(english(shown(two), two))
			.isEqualTo("With two teams left, A leads the event; Z needs 149.27 here to take the lead.");
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "possible.need.win-event;to be first, Z needs 2nd place or better in this segment",
					"possible.need.safe.win-event;Z is certain to be first",
					"possible.need.lost.win-event;Z can no longer be first" })
	void withOneTeamLeftInPlacesToo(String key, String said) {
		ResultVersion whole = places(8, 9, List.of(need(key, "Z")), row("A", 1), row("B", 2));
		assertThat(english(shown(whole), whole)).isEqualTo("With one team left, A leads the event; " + said + ".");
	}

	@Test
	void withFewLeftItSaysWhoCanStillBeFirst() {
		ResultVersion two = places(6, 9, List.of(need("possible.need.win-event", "X"),
				need("possible.need.lost.win-event", "Y"), need("possible.need.win-event", "Z")), row("A", 1));
		assertThat(english(shown(two), two))
			.isEqualTo("With three teams left, A leads the event; X and Z can still be first.");
		assertThat(Headline.ofSegment(this.event, shown(two), two).in(Locale.FRENCH))
			.endsWith("\u00a0; X et Z peuvent encore être premières.");
		ResultVersion one = places(7, 9,
				List.of(need("possible.need.win-event", "X"), need("possible.need.lost.win-event", "Y")), row("A", 1));
		assertThat(Headline.ofSegment(this.event, shown(one), one).in(FINNISH))
			.isEqualTo("Jäljellä kaksi joukkuetta: sarjan johdossa A; X voi vielä olla ensimmäinen.");
	}

	/** What is needed in the segment says nothing about the event, nor the other way. */
	@Test
	void aNeedOfAnotherStandingIsNotSaid() {
		ResultVersion whole = places(8, 9, List.of(need("possible.need.win-segment", "Z")), row("A", 1), row("B", 2));
		assertThat(english(shown(whole), whole)).isEqualTo("With one team left, A leads the event, ahead of B.");
	}

	/** What was published for the segment is what the event of one segment needs. */
	@Test
	void inAnEventOfOneSegmentBothAreTheSame() {
		Standing.Outlook outlook = new Standing.Outlook(List.of(), List.of(need("possible.need.win-segment", "Z")),
				List.of());
		Standing standing = new Standing("Cup", "Junior", "", "Rulebook", Sentence.said("Rule set"), "MAJORITY", 7, 8,
				9, "", "", List.of(new Standing.SegmentColumn("Free skating", 100)), List.of(row("A", 1)), outlook,
				null, null, null);
		ResultVersion whole = version(8, 9, row("A", 1));
		ResultVersion alone = new ResultVersion(whole.key(), whole.state(), whole.reason(), whole.publishedAt(),
				whole.fingerprint(), standing);
		assertThat(english(shown(whole), alone)).isEqualTo(
				"With one team left, A leads the event; to be first, Z needs 2nd place or better in this segment.");
	}

	@Test
	void whatTheSegmentTakesIsNotWhatTheEventTakes() {
		ResultVersion points = points(8, 9, List.of(needed("in-segment", 1, 14927)), total("A", 1, 21000));
		assertThat(english(shown(points), points)).isEqualTo("With one team left, A leads the event.");
	}

	@Test
	void aLeaderThatIsOutIsNamed() {
		Standing.Row out = row("B", null, 1, "WITHDRAWN");
		ResultVersion whole = version(5, 9, row("A", 1), out);
		assertThat(english(shown(whole), whole))
			.isEqualTo("After 5 of 9 teams, A leads the event; B, first until now, has withdrawn.");
		ResultVersion waiting = version(5, 9, row("A", 1), row("B", null, 1, Standing.WAITING));
		assertThat(english(shown(waiting), waiting)).isEqualTo("After 5 of 9 teams, A leads the event.");
	}

	@Test
	void nobodyMayHaveAPlace() {
		Standing.Row out = row("A", null, null, "DISQUALIFIED");
		ResultVersion one = version(1, 2, out);
		assertThat(english(shown(one), one)).isEqualTo("No team has a place yet; one is still to skate.");
		ResultVersion all = version(1, 1, out);
		assertThat(english(shown(all), all)).isEqualTo("Nobody is left to skate, and no team has a place.");
	}

	@Test
	void onceAllHaveSkatedItIsProvisionalUntilItIsSigned() {
		ResultVersion whole = version(9, 9, row("A", 1), row("B", 2));
		assertThat(english(shown(whole), whole))
			.isEqualTo("All 9 teams have skated: A is first in the event, provisional until the result is signed.");
		SegmentFacts posted = facts(whole, true, posted(), List.of());
		assertThat(english(posted, whole))
			.isEqualTo("The result is posted: A is first in the event, provisional until it is signed.");
		ResultVersion again = version(ResultVersion.Cause.REOPENED, ResultVersion.ResultState.PROVISIONAL, 9, 9, null,
				"MAJORITY", row("A", 1), row("B", 1));
		assertThat(english(facts(again, true, posted(), List.of()), again)).isEqualTo(
				"The result is open again: A and B share first place in the event, provisional until it is signed anew.");
		ResultVersion signed = version(ResultVersion.Cause.SIGNED, ResultVersion.ResultState.OFFICIAL, 9, 9, null,
				"MAJORITY", row("A", 1), row("B", 2));
		assertThat(english(shown(signed), signed)).isEqualTo("A has won the event; the result is official.");
		assertThat(Headline.ofSegment(this.event, shown(signed), signed).in(FINNISH))
			.isEqualTo("Tulos on virallinen: sarjan voitti A.");
	}

	/** The last segment is signed, an earlier one is not: nobody has won yet. */
	@Test
	void theEventIsOfficialOnlyAsAWhole() {
		ResultVersion signed = version(ResultVersion.Cause.SIGNED, ResultVersion.ResultState.OFFICIAL, 9, 9, null,
				"MAJORITY", row("A", 1));
		ResultVersion whole = version(9, 9, row("A", 1));
		assertThat(english(shown(signed), whole)).contains("A is first in the event, provisional");
	}

	@Test
	void whatIsCancelledSaysSo() {
		SegmentFacts cancelled = new SegmentFacts(this.stage.freeSkating, null, null, null, List.of(), "No ice.",
				List.of());
		assertThat(english(cancelled, null)).isEqualTo("The segment is cancelled.");
		EventView gone = new EventView(this.event.id(), new EventView.Listing(this.stage.competition.id(), 1, "x", "X"),
				this.event.judging(), this.event.segments(), new EventView.Cancellation("No ice.", Stage.NOON), 2);
		assertThat(Headline.ofEvent(new EventFacts(gone, List.of(), null)).english())
			.isEqualTo("The event is cancelled.");
		assertThat(Headline.ofCompetition(List.of(new EventFacts(gone, List.of(), null))).english())
			.isEqualTo("The competition is cancelled.");
	}

	@Test
	void betweenTwoSegmentsTheEventIsTold() {
		ResultVersion whole = version(9, 9, row("A", 1), row("B", 2));
		SegmentFacts first = facts(whole, true, posted(), List.of(), false);
		SegmentFacts second = facts(null, true, result(null), starts(Start.Mark.TO_COME));
		EventFacts facts = new EventFacts(this.event, List.of(first, second), StandingTable.of(whole));
		assertThat(Headline.ofEvent(facts).english())
			.isEqualTo("After Short programme, A leads the event, ahead of B.");
	}

	@Test
	void aCompetitionTellsOfTheEventOnWhichMostEyesAre() {
		ResultVersion whole = version(5, 9, row("A", 1), row("B", 2));
		EventFacts facts = new EventFacts(this.event, List.of(shown(whole)), StandingTable.of(whole));
		assertThat(Headline.ofCompetition(List.of(facts)).english())
			.isEqualTo("Junior, Free skating: After 5 of 9 teams, A leads the event, ahead of B.");
		assertThat(Headline.ofCompetition(List.of())).isEqualTo(Sentence.NONE);
		assertThat(Headline
			.ofCompetition(List.of(new EventFacts(this.event, List.of(facts(null, false, null, List.of())), null)))
			.english()).isEqualTo("Nobody has skated yet.");
	}

	@Test
	void whatTheLastTeamChangedIsSaid() {
		assertThat(changed("B", row("B", 1), row("A", 2, 1, "SKATED")))
			.isEqualTo("B takes the lead of the event from A.");
		assertThat(changed("B", row("A", 1, 1, "SKATED"), row("B", 2), row("C", 3)))
			.isEqualTo("B is 2nd in the event, behind A and ahead of C.");
		assertThat(changed("B", row("A", 1, 1, "SKATED"), row("B", 2))).isEqualTo("B is 2nd in the event, behind A.");
		assertThat(changed("B", row("A", 1, 1, "SKATED"), row("B", 1)))
			.isEqualTo("B shares 1st place in the event with A.");
		assertThat(changed("B", row("B", 1))).isEqualTo("B is the first with a place in the event.");
		assertThat(changed("B", row("A", 1), row("B", null, null, "DISQUALIFIED"))).isEmpty();
	}

	@Test
	void nothingIsNewsOncePosted() {
		ResultVersion whole = version(9, 9, row("A", 1), row("B", 2), row("C", 3), row("D", 4));
		assertThat(Tidings.ofSegment(this.event, shown(whole), whole, "B").justIn()).isNotNull();
		Tidings posted = Tidings.ofSegment(this.event, facts(whole, true, posted(), List.of()), whole, "B");
		assertThat(posted.justIn()).isNull();
		assertThat(posted.winners()).extracting(Standing.Row::team).containsExactly("A", "B", "C");
		assertThat(posted.certainty()).isEqualTo(Tidings.Certainty.PROVISIONAL);
	}

	private String changed(String entry, Standing.Row... rows) {
		ResultVersion whole = version(5, 9, rows);
		JustIn news = Tidings.ofSegment(this.event, shown(whole), whole, entry).justIn();
		assertThat(news).isNotNull();
		return news.changed().english();
	}

	private String english(SegmentFacts facts, @Nullable ResultVersion whole) {
		return Headline.ofSegment(this.event, facts, whole).english();
	}

	/** The last segment with that standing. */
	private SegmentFacts shown(ResultVersion version) {
		return facts(version, true, result(null), List.of());
	}

	private SegmentFacts facts(@Nullable ResultVersion version, boolean drawn, @Nullable SegmentResultView result,
			List<Start> starts) {
		return facts(version, drawn, result, starts, true);
	}

	private SegmentFacts facts(@Nullable ResultVersion version, boolean drawn, @Nullable SegmentResultView result,
			List<Start> starts, boolean last) {
		return new SegmentFacts(last ? this.stage.freeSkating : this.stage.shortProgramme,
				drawn ? this.stage.free().order() : null, result, version, List.of(), "", starts);
	}

	private static List<Start> starts(Start.Mark first) {
		return Stream.of("A", "B", "C")
			.map((team) -> new Start(team.charAt(0) - 'A' + 1, 1, team, team, "Club", "", "",
					team.equals("A") ? first : Start.Mark.TO_COME))
			.toList();
	}

	private SegmentResultView result(@Nullable String onIce) {
		return view(SegmentResultView.SegmentResultState.RUNNING, null,
				(onIce != null) ? new EntryId(new UUID(1, 1)) : null);
	}

	private SegmentResultView posted() {
		return view(SegmentResultView.SegmentResultState.POSTED, new SegmentResultView.Posted(Stage.NOON, "Poster"),
				null);
	}

	private SegmentResultView view(SegmentResultView.SegmentResultState state,
			SegmentResultView.@Nullable Posted posted, @Nullable EntryId onIce) {
		SegmentResultView.Signature none = new SegmentResultView.Signature("", null);
		return new SegmentResultView(this.stage.freeSkating.id(), state, new SegmentResultView.Ice(onIce, false),
				posted, new SegmentResultView.Signatures(none, none), 1, 1);
	}

	private static Sentence needed(String where, int place, int points) {
		return Sentence.of("score.needed.by", "Z", Sentence.of("score.needed",
				Sentence.of("score.needed." + where, place), Sentence.of("figure.points", points), Sentence.NONE));
	}

	private static Sentence need(String key, String team) {
		return Sentence.of(key, 1, Sentence.of("possible.in-the-event"), team,
				Sentence.of("possible.need.needs", Sentence.of("possible.or-better", 2)), Sentence.NONE);
	}

	private static Standing.Row row(String team, @Nullable Integer place) {
		return row(team, place, null, "SKATED");
	}

	private static Standing.Row row(String team, @Nullable Integer place, @Nullable Integer before, String status) {
		return new Standing.Row(place, false, before, team, team, "Club", 1, status, List.of(), List.of(), List.of(),
				(place != null) ? place * Hundredths.ONE : null, Sentence.said("Because."));
	}

	private static Standing.Row total(String team, int place, int total) {
		return new Standing.Row(place, false, null, team, team, "Club", 1, "SKATED", List.of(), List.of(), List.of(),
				total, Sentence.said("Because."));
	}

	private ResultVersion version(int skated, int starters, Standing.Row... rows) {
		return version(ResultVersion.Cause.CARDS_CLOSED, ResultVersion.ResultState.PROVISIONAL, skated, starters, null,
				"MAJORITY", rows);
	}

	private ResultVersion places(int skated, int starters, List<Sentence> needs, Standing.Row... rows) {
		return version(ResultVersion.Cause.CARDS_CLOSED, ResultVersion.ResultState.PROVISIONAL, skated, starters,
				new Standing.Outlook(List.of(), needs, List.of()), "MAJORITY", rows);
	}

	private ResultVersion points(int skated, int starters, List<Sentence> needs, Standing.Row... rows) {
		return version(ResultVersion.Cause.CARDS_CLOSED, ResultVersion.ResultState.PROVISIONAL, skated, starters,
				new Standing.Outlook(List.of(), needs, List.of()), "POINTS", rows);
	}

	private ResultVersion version(ResultVersion.Cause cause, ResultVersion.ResultState state, int skated, int starters,
			Standing.@Nullable Outlook outlook, String method, Standing.Row... rows) {
		Standing standing = new Standing("Cup", "Junior", "Free skating", "Rulebook", Sentence.said("Rule set"), method,
				7, skated, starters, "", "", List.of(), Arrays.asList(rows), outlook, null, null, null);
		return new ResultVersion(
				new ResultVersion.Key(ResultVersion.Scope.SEGMENT, this.stage.freeSkating.id().value(), skated), state,
				new ResultVersion.Reason(cause, Sentence.NONE), Instant.EPOCH, "0".repeat(64), standing);
	}

}
