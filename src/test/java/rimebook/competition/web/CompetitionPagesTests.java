package rimebook.competition.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpStatus;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingMethods;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.tabulation.SegmentKind;
import rimebook.web.PageTest;
import rimebook.wording.Sentence;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.assertArg;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.never;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

@PageTest({ CompetitionController.class, EventController.class, RuleSetController.class })
@Import({ EventRoad.class, RuleSets.class, JudgingMethods.class })
@WithMockUser(username = "ada", roles = "SECRETARY")
class CompetitionPagesTests {

	private static final CompetitionId ID = new CompetitionId(UUID.randomUUID());

	private static final EventId EVENT = new EventId(UUID.randomUUID());

	private static final SegmentId SHORT = new SegmentId(UUID.randomUUID());

	private static final DraftEvent.PointsChoice SENIOR = new DraftEvent.PointsChoice("synchronized-2025-26", "senior");

	private static final String PAGE = "/desk/competitions/" + ID;

	private static final String EVENT_PAGE = PAGE + "/events/" + EVENT;

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private Competitions competitions;

	@BeforeEach
	void oneCompetition() {
		given(this.competitions.competition(ID)).willReturn(competition(CompetitionState.PLANNED));
		given(this.competitions.event(EVENT)).willReturn(event());
		given(this.competitions.addEvent(any(), any(), any())).willReturn(event());
	}

	@Test
	void saysThatThereIsNoCompetition() {
		assertThat(this.mvc.get().uri("/desk/competitions")).hasStatusOk()
			.bodyText()
			.contains("There is no competition yet.", "/desk/competitions/new");
	}

	@Test
	@WithMockUser(roles = "ANNOUNCER")
	void offersNoChangeToReaders() {
		given(this.competitions.all()).willReturn(List.of(competition(CompetitionState.RUNNING)));
		assertThat(this.mvc.get().uri("/desk/competitions")).hasStatusOk()
			.bodyText()
			.contains("Frostlight Trophy", "13 to 14 February 2027", "running")
			.doesNotContain("/desk/competitions/new");
		assertThat(this.mvc.get().uri(PAGE)).hasStatusOk()
			.bodyText()
			.doesNotContain("/edit", "/state", "/desk/entries/");
	}

	@Test
	void offersTheMovesAndSaysWhyOneIsRefused() {
		given(this.competitions.moves(ID)).willReturn(
				List.of(new Competitions.Move(CompetitionState.ENTRIES_OPEN, Sentence.said("Add an event first."))));
		assertThat(this.mvc.get().uri(PAGE)).hasStatusOk()
			.bodyText()
			.contains("Open entries", "disabled", "Add an event first.", "There is no event yet");
	}

	@Test
	void asksOnceBeforeAMoveSayingWhatFollows() {
		given(this.competitions.competition(ID)).willReturn(competition(CompetitionState.RUNNING));
		given(this.competitions.moves(ID)).willReturn(List.of(new Competitions.Move(CompetitionState.FINAL, null)));
		assertThat(this.mvc.get().uri(PAGE)).hasStatusOk().bodyText().contains(PAGE + "/state?next=FINAL");
		assertThat(this.mvc.get().uri(PAGE + "/state?next=FINAL")).hasStatusOk()
			.bodyText()
			.contains("no entry, draw, seat, card, posting, signature, correction or protest is taken",
					"Leave it as it is", "value=\"FINAL\"");
		assertThat(this.mvc.get().uri(PAGE + "/state?next=ARCHIVED")).hasStatus(HttpStatus.NOT_FOUND);
	}

	@Test
	void aSignatureWaitsUnlessTheBoxIsLeftOut() {
		assertThat(this.mvc.get().uri(PAGE + "/events/new")).hasStatusOk()
			.bodyText()
			.containsPattern("name=\"signatureWaits\"[^>]*checked");
		Map<String, String> typed = anEvent();
		typed.remove("signatureWaits");
		typed.put("_signatureWaits", "on");
		assertThat(post(PAGE + "/events/new", typed)).hasStatus3xxRedirection();
		then(this.competitions).should()
			.addEvent(eq(ID), assertArg((draft) -> assertThat(draft.judging().signatureWaits()).isFalse()), any());
	}

	@Test
	void aSegmentWithoutAShortestIsTypedByLeavingItEmpty() {
		Map<String, String> typed = anEvent();
		typed.putAll(Map.of("first.length", "2:50", "first.tolerance", "0", "first.shorter", ""));
		assertThat(post(PAGE + "/events/new", typed)).hasStatus3xxRedirection();
		then(this.competitions).should()
			.addEvent(eq(ID),
					assertArg((draft) -> assertThat(draft.segments()).containsExactly(
							new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 50, 170, 0, null))),
					any());
	}

	@Test
	void movesTheCompetition() {
		assertThat(this.mvc.post().uri(PAGE + "/state").with(csrf()).param("version", "3").param("state", "RUNNING"))
			.hasRedirectedUrl(PAGE);
		then(this.competitions).should()
			.move(eq(ID), eq(3), eq(CompetitionState.RUNNING),
					assertArg((actor) -> assertThat(actor.role()).isEqualTo("secretary")));
	}

	@Test
	void saysOnThePageWhyAMoveIsRefused() {
		given(this.competitions.move(any(), anyInt(), any(), any())).willThrow(
				new ConflictException("competition-move", "state", Sentence.said("Not every result is official.")));
		assertThat(this.mvc.post().uri(PAGE + "/state").with(csrf()).param("version", "3").param("state", "FINAL"))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Not every result is official.");
	}

	@ParameterizedTest
	@CsvSource({ "GONE", "''" })
	void refusesAnUnknownState(String state) {
		assertThat(this.mvc.post().uri(PAGE + "/state").with(csrf()).param("version", "3").param("state", state))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT);
		then(this.competitions).should(never()).move(any(), anyInt(), any(), any());
	}

	@Test
	void writesDownACompetition() {
		given(this.competitions.create(any(), any())).willReturn(competition(CompetitionState.PLANNED));
		assertThat(post("/desk/competitions/new", aCompetition())).hasRedirectedUrl(PAGE);
		then(this.competitions).should().create(eq(CompetitionFixtures.aCompetition("Frostlight Trophy")), any());
	}

	@Test
	void keepsWhatWasTypedAndSaysWhatIsWrong() {
		Map<String, String> typed = Map.of("name", " ", "place", "P".repeat(121), "zone", "Mars/Olympus", "firstDay",
				"13.02.2027", "lastDay", "", "rulebook", "Our rulebook");
		assertThat(post("/desk/competitions/new", typed)).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.containsSubsequence("Please give the competition a name.", "at most 120 characters fit",
					"Please choose the time zone from the list", "First day: please give it as year-month-day",
					"Last day: please give it as year-month-day", "</ul>")
			.contains("value=\"Our rulebook\"", "value=\"13.02.2027\"");
		then(this.competitions).should(never()).create(any(), any());
	}

	@Test
	void showsAStaleChangeOnTheForm() {
		given(this.competitions.change(any(), anyInt(), any(), any()))
			.willThrow(ConflictException.stale("competition"));
		Map<String, String> typed = aCompetition();
		typed.putAll(Map.of("version", "2", "name", "Another name"));
		assertThat(post(PAGE + "/edit", typed)).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("Somebody else changed this competition", "value=\"Another name\"");
	}

	@Test
	void answersNotFoundForWhatIsNotThere() {
		CompetitionId nowhere = new CompetitionId(UUID.randomUUID());
		given(this.competitions.competition(nowhere)).willThrow(NotFoundException.of("competition", nowhere));
		assertThat(this.mvc.get().uri("/desk/competitions/" + nowhere)).hasStatus(HttpStatus.NOT_FOUND);
	}

	@Test
	void answersNotFoundForAnEventOfAnotherCompetition() {
		CompetitionId other = new CompetitionId(UUID.randomUUID());
		given(this.competitions.competition(other)).willReturn(competition(CompetitionState.PLANNED));
		assertThat(this.mvc.get().uri("/desk/competitions/" + other + "/events/" + EVENT))
			.hasStatus(HttpStatus.NOT_FOUND);
	}

	@Test
	void addsAnEvent() {
		assertThat(post("/events/new", "7", "", "2:40", "0.5")).hasRedirectedUrl(EVENT_PAGE);
		DraftEvent draft = new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 7),
				List.of(CompetitionFixtures.aShort()));
		then(this.competitions).should().addEvent(eq(ID), eq(draft), any());
	}

	@ParameterizedTest
	@CsvSource({ "4, 2:40, 0.5, An even number of judges", "seven, 2:40, 0.5, from 1 to 15",
			"17, 2:40, 0.5, from 1 to 15", "7, 160, 0.5, such as 2:40", "7, 0:10, 0.5, such as 2:40",
			"7, 2:40, half, such as 0.5 or 1.0", "7, 2:40, 0, such as 0.5 or 1.0" })
	void saysWhatIsWrongWithAnEvent(String judges, String length, String factor, String sentence) {
		assertThat(post("/events/new", judges, "", length, factor)).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains(sentence, "value=\"" + judges + "\"", "value=\"" + length + "\"", "value=\"" + factor + "\"");
		then(this.competitions).should(never()).addEvent(any(), any(), any());
	}

	@Test
	void refusesAChoiceThatWasNotOffered() {
		assertThat(post("/events/new", "7", "", "2:40", "0.5").param("second.kind", "GALA")
			.param("rules.zeroMark", "MAYBE")).hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("This does not have the expected form.", "value=\"Short programme\"", "value=\"2:40\"");
		then(this.competitions).should(never()).addEvent(any(), any(), any());
	}

	@Test
	void takesAnEvenPanelWithItsReason() {
		assertThat(post("/events/" + EVENT + "/edit", "4", "A judge fell ill", "2:40", "0.5"))
			.hasRedirectedUrl(EVENT_PAGE);
		then(this.competitions).should()
			.changeEvent(eq(EVENT), eq(5),
					assertArg((draft) -> assertThat(draft.judging().evenPanelReason()).isEqualTo("A judge fell ill")),
					any());
	}

	@Test
	void refusesAnEventWithoutSegment() {
		assertThat(this.mvc.post().uri(PAGE + "/events/new").with(csrf()).param("name", "Junior").param("judges", "7"))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains("An event needs at least one segment", "Please choose how the event is judged");
	}

	@Test
	void opensTheFormWithWhatIsThere() {
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/edit")).hasStatusOk()
			.bodyText()
			.contains("value=\"Short programme\"", "value=\"2:40\"", "value=\"0.5\"");
	}

	@Test
	void copiesAnEvent() {
		given(this.competitions.copyEvent(any(), any(), any())).willReturn(event());
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/copy")).hasStatusOk();
		assertThat(this.mvc.post().uri(EVENT_PAGE + "/copy").with(csrf()).param("name", "Senior"))
			.hasRedirectedUrl(EVENT_PAGE);
		then(this.competitions).should().copyEvent(eq(EVENT), eq("Senior"), any());
	}

	@Test
	void takesAnEvenPanelForPointsWithoutAReason() {
		assertThat(post("/events/new", "POINTS", "8", "", "2:40", "1.0").param("points", "synchronized-2025-26/senior"))
			.hasRedirectedUrl(EVENT_PAGE);
		DraftEvent draft = new DraftEvent("Junior", DraftEvent.Judging.byPoints(8, SENIOR),
				List.of(new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 100, 160, 10)));
		then(this.competitions).should().addEvent(eq(ID), eq(draft), any());
	}

	@ParameterizedTest
	@CsvSource({ "2, synchronized-2025-26/senior, from 3 to 9 for points",
			"10, synchronized-2025-26/senior, from 3 to 9", "7, '', Please choose the rule set and level",
			"7, senior, Please choose the rule set and level" })
	void saysWhatIsWrongWithAnEventJudgedByPoints(String judges, String points, String sentence) {
		assertThat(post("/events/new", "POINTS", judges, "", "2:40", "1.0").param("points", points))
			.hasStatus(HttpStatus.UNPROCESSABLE_CONTENT)
			.bodyText()
			.contains(sentence, "value=\"" + judges + "\"");
		then(this.competitions).should(never()).addEvent(any(), any(), any());
	}

	@Test
	void showsTheRuleSetWithWhatIsFromMemory() {
		given(this.competitions.event(EVENT)).willReturn(pointsEvent());
		assertThat(this.mvc.get().uri(EVENT_PAGE)).hasStatusOk()
			.bodyText()
			.contains(EVENT_PAGE + "/rules", "figures of this rule set were written down from memory");
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/rules")).hasStatusOk()
			.bodyText()
			.contains("× 2.67", "from memory, look it up", "look up the factor in the Technical Rules", "2.00 from 2",
					"the higher total of the elements", "no hold element");
	}

	@Test
	void findsACodeByItsWords() {
		given(this.competitions.event(EVENT)).willReturn(pointsEvent());
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/rules/values?search=move level 4 downgraded")).hasStatusOk()
			.bodyText()
			.contains("ME4&lt;", "6.75")
			.doesNotContain("TwE");
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/rules/values?search=quadruple")).hasStatusOk()
			.bodyText()
			.contains("No code fits quadruple.");
	}

	@Test
	void aPlacementEventHasNoRuleSetOfPoints() {
		assertThat(this.mvc.get().uri(EVENT_PAGE + "/rules")).hasStatus(HttpStatus.NOT_FOUND);
	}

	@ParameterizedTest
	@CsvSource({ "entries, true", "panel, true", "draw, true", "stand, false", "results, false", "protests, true" })
	void leadsASecretaryWhereASecretaryMayGo(String door, boolean open) {
		assertThat(this.mvc.get().uri(EVENT_PAGE)).hasStatusOk()
			.bodyText()
			.satisfies((text) -> assertThat(text.contains("\"/desk/" + door + "/")).isEqualTo(open));
	}

	private MockMvcTester.MockMvcRequestBuilder post(String path, String judges, String reason, String length,
			String factor) {
		return post(path, "MAJORITY", judges, reason, length, factor);
	}

	private MockMvcTester.MockMvcRequestBuilder post(String path, String method, String judges, String reason,
			String length, String factor) {
		Map<String, String> typed = anEvent();
		typed.putAll(Map.of("method", method, "judges", judges, "evenPanelReason", reason, "first.length", length,
				"first.factor", factor));
		return post(PAGE + path, typed);
	}

	private MockMvcTester.MockMvcRequestBuilder post(String uri, Map<String, String> typed) {
		MockMvcTester.MockMvcRequestBuilder request = this.mvc.post().uri(uri).with(csrf());
		typed.forEach((name, value) -> request.param(name, value));
		return request;
	}

	/** What a browser sends of the form of an event; to be changed. */
	private static Map<String, String> anEvent() {
		return new HashMap<>(Map.ofEntries(entry("method", "MAJORITY"), entry("signatureWaits", "true"),
				entry("version", "5"), entry("name", "Junior"), entry("judges", "7"), entry("evenPanelReason", ""),
				entry("first.name", "Short programme"), entry("first.kind", "SHORT"), entry("first.length", "2:40"),
				entry("first.tolerance", "10"), entry("first.factor", "0.5"), entry("second.name", ""),
				entry("second.length", "")));
	}

	/** What a browser sends of the form of a competition; to be changed. */
	private static Map<String, String> aCompetition() {
		return new HashMap<>(Map.of("name", "Frostlight Trophy", "place", "Skerrywick", "zone", "Europe/Helsinki",
				"firstDay", "2027-02-13", "lastDay", "2027-02-14", "rulebook", "Rulebook 2026/27"));
	}

	private static CompetitionView competition(CompetitionState state) {
		return new CompetitionView(ID, "frostlight-trophy", new DraftCompetition("Frostlight Trophy", "Skerrywick",
				ZoneId.of("Europe/Helsinki"), LocalDate.of(2027, 2, 13), LocalDate.of(2027, 2, 14), "Rulebook 2026/27"),
				state, 3);
	}

	private static EventView event() {
		return new EventView(EVENT, new EventView.Listing(ID, 1, "junior", "Junior"),
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, 7),
				List.of(new SegmentView(SHORT, EVENT, 1, "short-programme",
						new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 50, 160, 10), null)),
				null, 5);
	}

	private static EventView pointsEvent() {
		return new EventView(EVENT, new EventView.Listing(ID, 1, "senior", "Senior"),
				DraftEvent.Judging.byPoints(8, SENIOR), event().segments(), null, 5);
	}

	@TestConfiguration(proxyBeanMethods = false)
	static class Outside {

		@Bean
		Clock clock() {
			return Clock.systemUTC();
		}

	}

}
