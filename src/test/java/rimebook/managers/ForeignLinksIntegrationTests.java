package rimebook.managers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

import jakarta.servlet.http.Cookie;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

import rimebook.accounts.TeamLinks;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryView;
import rimebook.entries.PlannedElements;
import rimebook.entries.Renaming;
import rimebook.music.Music;
import rimebook.music.MusicView;
import rimebook.music.SpokenName;
import rimebook.music.SpokenNames;
import rimebook.music.Tones;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/**
 * Every route of a team's managers is asked with a good link, with none, and with links
 * that open nothing, with everything of another team in address and form: nothing of that
 * team is read or changed. Shares the application of the routes.
 */
@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:routes;DB_CLOSE_DELAY=-1")
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class ForeignLinksIntegrationTests {

	private static final List<String> OPEN = List.of("/manager", "/manager/leave");

	private static final Route OPENING = new Route(RequestMethod.POST, "/manager");

	@Autowired
	private MockMvcTester mvc;

	@Autowired
	private List<RequestMappingInfoHandlerMapping> mappings;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	/** From which address is asked, since guesses are counted by it. */
	private int from = 1;

	private SmallCompetition day;

	private Side own;

	private Side other;

	@BeforeEach
	void twoTeams() throws IOException {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.aPointsEvent("Senior", 3));
		this.own = new Side(this.day.entries().get(0), "Ownling");
		this.other = new Side(this.day.entries().get(1), "Otherling");
	}

	@Test
	void withAGoodLinkEveryPageOpensAndTellsNothingOfAnotherTeam() {
		String token = link(this.own);
		String before = this.other.everything();
		for (Route route : routes()) {
			if (route.equals(OPENING)) {
				continue;
			}
			MvcTestResult answer = ask(route, this.own.ids(), token, this.own);
			assertThat(answer.getResponse().getStatus()).as(route.toString())
				.matches((status) -> status < 400 || status == 422 || status == 409, "is answered");
			this.other.isNotIn(answer, route);
		}
		assertThat(this.other.everything()).isEqualTo(before);
	}

	@Test
	void whatIsAnotherTeamsIsNotThere() {
		String token = link(this.own);
		String before = this.other.everything();
		for (Route route : routes()) {
			MvcTestResult answer = ask(route, this.other.ids(), token, this.other);
			if (route.isOfOneTeam()) {
				assertThat(answer.getResponse().getStatus()).as(route.toString()).isEqualTo(404);
			}
			this.other.isNotIn(answer, route);
		}
		assertThat(this.other.everything()).isEqualTo(before);
	}

	@Test
	void aSegmentOfAnotherEventIsNotThere() {
		String token = link(this.own);
		SmallCompetition further = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		Map<String, String> ids = new TreeMap<>(this.own.ids());
		ids.put("segment", further.segment(1).toString());
		routes().stream()
			.filter((route) -> route.path().contains("{segment}"))
			.forEach((route) -> assertThat(ask(route, ids, token, this.own).getResponse().getStatus())
				.as(route.toString())
				.isEqualTo(404));
	}

	@Test
	void withoutALinkThatOpensSomethingNothingIsReadOrChanged() {
		TeamLinks links = this.context.getBean(TeamLinks.class);
		String shut = link(this.own);
		links.revoke(this.own.entry.id().value(), SECRETARY);
		String ended = link(this.other);
		this.database.sql("update team_link set expires_at = ? where entry_id = ?")
			.param(OffsetDateTime.ofInstant(Instant.now().minusSeconds(1), ZoneOffset.UTC))
			.param(this.other.entry.id().value())
			.update();
		String before = this.own.everything() + this.other.everything();
		List<@Nullable String> tokens = new ArrayList<>(List.of(shut, ended, "x".repeat(43)));
		tokens.add(null);
		for (String token : tokens) {
			for (Route route : routes()) {
				if (!OPEN.contains(route.path())) {
					this.from++;
					MvcTestResult answer = ask(route, this.own.ids(), token, this.own);
					assertThat(answer.getResponse().getStatus()).as(route.toString()).isEqualTo(302);
					assertThat(answer.getResponse().getRedirectedUrl()).as(route.toString()).isEqualTo("/manager");
				}
			}
		}
		assertThat(this.own.everything() + this.other.everything()).isEqualTo(before);
	}

	@Test
	void whoeverGuessesIsStoppedAndNobodyElse() {
		Route page = new Route(RequestMethod.GET, "/manager/roster");
		this.from = 250;
		for (int guess = 0; guess < 20; guess++) {
			assertThat(ask(page, Map.of(), "guess" + guess, this.own).getResponse().getStatus()).isEqualTo(302);
		}
		assertThat(ask(page, Map.of(), "guess", this.own).getResponse().getStatus()).isEqualTo(429);
		this.from = 251;
		String token = link(this.own);
		Route form = new Route(RequestMethod.POST, "/manager/roster");
		for (int refused = 0; refused < 25; refused++) {
			assertThat(this.mvc.post().uri(form.path()).with(csrf()).cookie(new Cookie("rimebook-team", token)))
				.as("a form that is refused is no guess")
				.hasStatus(422);
		}
	}

	private String link(Side side) {
		return this.context.getBean(TeamLinks.class)
			.give(new TeamLinks.GiveLink(this.day.competition().id().value(), side.entry.id().value(),
					Instant.now().plusSeconds(3600)), SECRETARY);
	}

	/** With whatever a form could be made to say beside what it asks for. */
	private MvcTestResult ask(Route route, Map<String, String> ids, @Nullable String token, Side named) {
		var request = this.mvc.method(HttpMethod.valueOf(route.method().name())).uri(route.address(ids)).with(csrf());
		String address = "203.0.113." + this.from;
		request = request.with((sent) -> {
			sent.setRemoteAddr(address);
			return sent;
		});
		if (token != null) {
			request = request.cookie(new Cookie("rimebook-team", token));
		}
		if (route.method() == RequestMethod.POST && !OPEN.contains(route.path())) {
			for (Map.Entry<String, String> field : named.fields().entrySet()) {
				request = request.param(field.getKey(), field.getValue());
			}
		}
		return request.exchange();
	}

	private List<Route> routes() {
		List<Route> routes = new ArrayList<>();
		this.mappings.forEach((mapping) -> mapping.getHandlerMethods()
			.keySet()
			.forEach((info) -> info.getPatternValues()
				.stream()
				.filter((path) -> path.equals("/manager") || path.startsWith("/manager/"))
				.forEach((path) -> info.getMethodsCondition()
					.getMethods()
					.forEach((method) -> routes.add(new Route(method, path))))));
		assertThat(routes).hasSizeGreaterThan(20);
		return routes.stream().filter((route) -> !route.path().equals("/manager/leave")).toList();
	}

	private record Route(RequestMethod method, String path) {

		String address(Map<String, String> ids) {
			String address = this.path;
			for (Map.Entry<String, String> id : ids.entrySet()) {
				address = address.replace("{" + id.getKey() + "}", id.getValue());
			}
			return address;
		}

		boolean isOfOneTeam() {
			return this.path.contains("{place}") || this.path.contains("{contact}") || this.path.contains("{version}");
		}

		@Override
		public String toString() {
			return this.method + " " + this.path;
		}

	}

	/** A team with something in every part. */
	private final class Side {

		private final EntryView entry;

		private final String mark;

		private final RosterView.Place place;

		private final ContactView contact;

		private final MusicView.Version music;

		Side(EntryView entry, String word) throws IOException {
			this.entry = entry;
			this.mark = word + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
			this.place = the(Rosters.class).addNew(entry.id(),
					new DraftSkater("Aila", this.mark, LocalDate.of(2011, 3, 9), "MN-1", entry.team().club().id()),
					PlaceRole.SKATES, true, "", SECRETARY);
			this.contact = the(Contacts.class)
				.add(new Contacts.AddContact(entry.id(), ContactView.Kind.COACH, this.mark, "040 1234", ""), SECRETARY);
			this.music = the(Music.class).handIn(
					new Music.HandIn(entry.id(), segment(), new ByteArrayResource(Tones.wav(2000, 440 + word.length())),
							Tones.wav(2000, 440 + word.length()).length, this.mark + ".wav", ""),
					SECRETARY);
			byte[] voice = Tones.wav(1500, 440 + word.length());
			the(SpokenNames.class).record(
					new SpokenNames.Recording(entry.team().id(), heard(), new ByteArrayResource(voice), voice.length),
					SECRETARY);
			the(Rulings.class).ask(new Rulings.AskQuestion(entry.id(), null, QuestionView.RulingTopic.PROP,
					"May " + this.mark + " carry a lamp?", "Somebody"), SECRETARY);
			the(PlannedElements.class).plan(new PlannedElements.PlanElements(entry.id(), segment(), "TwE2", -1),
					SECRETARY);
		}

		/** Teams are known from one competition to the next. */
		private String heard() {
			return the(SpokenNames.class).of(this.entry.team().id()).map(SpokenName::sha256).orElse("");
		}

		private SegmentId segment() {
			return ForeignLinksIntegrationTests.this.day.segment(1);
		}

		Map<String, String> ids() {
			return Map.of("place", this.place.id().toString(), "contact", this.contact.id().toString(), "version",
					this.music.id().toString(), "segment", segment().toString());
		}

		/** Valid for every form at once, so that what is not refused would be done. */
		Map<String, String> fields() {
			Map<String, String> fields = new TreeMap<>(Map.of("entry", this.entry.id().toString(), "team",
					this.entry.team().id().toString(), "place", this.place.id().toString(), "role", "ALTERNATE",
					"version", "0", "givenName", "Changed", "familyName", "Changed", "printed", "no"));
			fields.putAll(Map.of("kind", "MANAGER", "name", "Somebody", "phone", "040 999", "codes", "ME4", "onSite",
					"true", "topic", "PROP", "question", "May we?", "askedBy", "Somebody"));
			fields.putAll(Map.of("category", "CONDUCT", "text", "It was so.", "filedBy", "Somebody", "spokenAs", "so"));
			return fields;
		}

		/** All that could be changed. */
		String everything() {
			return the(Rosters.class).of(this.entry.id()) + "\n" + the(Contacts.class).of(this.entry.id()) + "\n"
					+ the(Music.class).of(this.entry.id()) + "\n" + the(Rulings.class).askedFor(this.entry.id()) + "\n"
					+ the(PlannedElements.class).of(this.entry.id(), segment()) + "\n"
					+ the(Renaming.class).team(this.entry.team().id()) + "\n"
					+ the(SpokenNames.class).of(this.entry.team().id());
		}

		void isNotIn(MvcTestResult answer, Route route) {
			assertThat(new String(answer.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8))
				.as(route.toString())
				.doesNotContain(this.mark)
				.doesNotContain(this.entry.team().name() + "<");
		}

		private <T> T the(Class<T> facade) {
			return ForeignLinksIntegrationTests.this.context.getBean(facade);
		}

	}

}
