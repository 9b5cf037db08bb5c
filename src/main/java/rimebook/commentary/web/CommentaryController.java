package rimebook.commentary.web;

import java.io.IOException;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.accounts.CommentaryLinks;
import rimebook.accounts.LinkRefused;
import rimebook.accounts.LinkStanding;
import rimebook.commentary.Announcement;
import rimebook.commentary.Commentary;
import rimebook.commentary.CommentaryView;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentId;
import rimebook.entries.TeamView;
import rimebook.live.PageLanguage;
import rimebook.live.PublicTelling;
import rimebook.music.SpokenNames;
import rimebook.pages.LinkCookie;
import rimebook.shared.NotFoundException;

/**
 * The commentator's page. Its link holds the token behind a hash sign; the page sends it
 * once, as a form does, and a cookie keeps it from then on. Whoever has no script types
 * or pastes it.
 */
@Controller
@RequestMapping(CommentaryController.PATH)
class CommentaryController {

	static final String PATH = "/commentary";

	private static final LinkCookie COOKIE = new LinkCookie("rimebook-commentary", PATH);

	private final CommentaryLinks links;

	private final PublicTelling telling;

	private final Commentary commentary;

	private final Places places;

	private final CommentaryPages pages;

	private final SpokenNames names;

	private final Clock clock;

	CommentaryController(CommentaryLinks links, PublicTelling telling, Commentary commentary, Places places,
			CommentaryPages pages, SpokenNames names, Clock clock) {
		this.names = names;
		this.links = links;
		this.telling = telling;
		this.commentary = commentary;
		this.places = places;
		this.pages = pages;
		this.clock = clock;
	}

	/** The segment on which most eyes are. */
	@GetMapping
	void watched(HttpServletRequest request, HttpServletResponse response) throws IOException {
		show(null, request, response);
	}

	/** One that was chosen; another may be skated elsewhere at the same time. */
	@GetMapping("/{segment}")
	void chosen(@PathVariable SegmentId segment, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		show(segment, request, response);
	}

	/** How a team says its name, for whoever has the link of a competition it is in. */
	@GetMapping("/said/{team}")
	ResponseEntity<byte[]> said(@PathVariable TeamView.Id team, HttpServletRequest request) {
		return COOKIE.read(request)
			.flatMap((token) -> competitionOf(token, request))
			.filter((competition) -> this.names.isIn(team, competition))
			.map((competition) -> this.names.content(team).answer())
			.orElseThrow(() -> NotFoundException.of("music", team));
	}

	private Optional<CompetitionId> competitionOf(String token, HttpServletRequest request) {
		try {
			return Optional.of(new CompetitionId(pass(token, request).competition()));
		}
		catch (LinkRefused ex) {
			return Optional.empty();
		}
	}

	/** Who has a good link may ask for what is not there. */
	private CommentaryLinks.Pass pass(String token, HttpServletRequest request) throws LinkRefused {
		CommentaryLinks.Pass pass = this.links.pass(token);
		LinkCookie.note(request, true);
		return pass;
	}

	@PostMapping
	void open(@RequestParam(defaultValue = "") String token, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		String typed = LinkCookie.bare(token);
		try {
			CommentaryLinks.Pass pass = this.links.open(typed);
			COOKIE.give(request, response, typed, this.clock.instant(), pass.expiresAt());
			onward(request, response);
		}
		catch (LinkRefused ex) {
			refuse(ex.standing(), request, response);
		}
	}

	/** This device forgets the link; whoever has it can open it again. */
	@PostMapping("/leave")
	void leave(HttpServletRequest request, HttpServletResponse response) {
		COOKIE.take(request, response);
		onward(request, response);
	}

	private static void onward(HttpServletRequest request, HttpServletResponse response) {
		response.setStatus(HttpStatus.SEE_OTHER.value());
		response.setHeader(HttpHeaders.LOCATION, request.getContextPath() + PATH + PageLanguage.of(request).query());
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
	}

	private void show(@Nullable SegmentId asked, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		Optional<String> token = COOKIE.read(request);
		if (token.isEmpty()) {
			this.pages.page(request, response, HttpStatus.OK, "commentary/open", Map.of("standing", ""));
			return;
		}
		try {
			CommentaryLinks.Pass pass = pass(token.get(), request);
			CompetitionView competition = published(pass);
			if (competition == null) {
				this.pages.page(request, response, HttpStatus.OK, "commentary/open", Map.of("standing", "early"));
				return;
			}
			show(pass, competition, asked, request, response);
		}
		catch (LinkRefused ex) {
			if (!isPart(request)) {
				COOKIE.take(request, response);
			}
			refuse(ex.standing(), request, response);
		}
	}

	/**
	 * An open page asks for its moving part and, where that is refused, for itself: only
	 * then the device forgets the link, so that the page can say why it opens nothing.
	 */
	private static boolean isPart(HttpServletRequest request) {
		return "live".equals(request.getParameter("part"));
	}

	/** The competition of a link, {@code null} while it is only planned. */
	private @Nullable CompetitionView published(CommentaryLinks.Pass pass) {
		try {
			return this.telling.competition(new CompetitionId(pass.competition()));
		}
		catch (NotFoundException ex) {
			return null;
		}
	}

	private void show(CommentaryLinks.Pass pass, CompetitionView competition, @Nullable SegmentId asked,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		if (isPart(request)) {
			PageLanguage language = PageLanguage.of(request);
			this.pages.part(request, response,
					new CommentaryPages.PartKey(competition.slug(), (asked != null) ? asked.toString() : "",
							this.telling.moment(competition), pass.calls(), language.locale(), language.query()),
					() -> live(pass, competition, asked));
			return;
		}
		Map<String, @Nullable Object> model = live(pass, competition, asked);
		model.put("pass", pass);
		model.put("signals", request.getContextPath() + PublicTelling.signals(competition));
		model.put("path", request.getContextPath() + PATH + ((asked != null) ? "/" + asked : ""));
		this.pages.page(request, response, HttpStatus.OK, "commentary/page", model);
	}

	private Map<String, @Nullable Object> live(CommentaryLinks.Pass pass, CompetitionView competition,
			@Nullable SegmentId asked) {
		SegmentId segment = (asked != null) ? asked : this.telling.watched(competition).orElse(null);
		CommentaryView view = (segment != null) ? this.commentary.of(competition, segment, pass.calls()) : null;
		Map<String, @Nullable Object> model = new HashMap<>();
		model.put("competition", competition);
		model.put("view", view);
		model.put("aloud", (view != null) ? Announcement.of(view).parts() : List.of());
		model.put("places", this.places.of(competition, segment));
		model.put("chosen", asked != null);
		model.put("recordings", (view != null) ? recordings(view) : Map.of());
		return model;
	}

	/** Of the teams of which something is told, by the identity of the team. */
	private Map<String, String> recordings(CommentaryView view) {
		return this.names
			.of(Stream.concat(Stream.ofNullable(view.now()), view.next().stream())
				.map((card) -> card.team().id())
				.toList())
			.values()
			.stream()
			.collect(Collectors.toMap((name) -> name.team().toString(), (name) -> name.sha256().substring(0, 8)));
	}

	private void refuse(LinkStanding standing, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		HttpStatus status = (standing == LinkStanding.UNKNOWN) ? HttpStatus.NOT_FOUND : HttpStatus.GONE;
		this.pages.page(request, response, status, "commentary/open",
				Map.of("standing", standing.name().toLowerCase(Locale.ROOT)));
	}

}
