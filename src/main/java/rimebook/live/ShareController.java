package rimebook.live;

import java.io.IOException;
import java.util.function.Function;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.competition.CompetitionView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;

/** A picture for each version of a standing, for whoever passes its address on. */
@Controller
class ShareController {

	private static final String PICTURE = "/share/{number:[1-9][0-9]{0,5}}.png";

	private final RenditionCache renditions;

	private final Published published;

	private final EventReader events;

	private final PublicPlaces places;

	private final Standings standings;

	private final SharePictures pictures;

	ShareController(RenditionCache renditions, Published published, EventReader events, PublicPlaces places,
			Standings standings, SharePictures pictures) {
		this.renditions = renditions;
		this.published = published;
		this.events = events;
		this.places = places;
		this.standings = standings;
		this.pictures = pictures;
	}

	@GetMapping("/follow/{competition}/{event}" + PICTURE)
	void event(@PathVariable String competition, @PathVariable String event, @PathVariable int number,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, (language) -> {
			CompetitionView view = this.published.competition(competition);
			EventFacts facts = this.events.read(this.published.event(view, event));
			return drawn(view,
					this.standings.version(facts.event().id(), number)
						.orElseThrow(() -> NotFoundException.of("version", number)),
					facts.version(), this.events.tidings(facts), language);
		});
	}

	@GetMapping("/follow/{competition}/{event}/{segment}" + PICTURE)
	void segment(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable int number, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, (language) -> {
			PublicPlaces.Place place = this.places.segment(competition, event, segment);
			return drawn(place.competition(),
					this.standings.version(place.facts().segment().id(), number)
						.orElseThrow(() -> NotFoundException.of("version", number)),
					place.facts().version(), this.places.tidings(place), language);
		});
	}

	private byte[] drawn(CompetitionView competition, ResultVersion version, @Nullable ResultVersion newest,
			Tidings tidings, PageLanguage language) {
		boolean isNewest = newest != null && newest.number() == version.number();
		return this.pictures.png(competition, version, isNewest ? tidings.headline().in(language.locale()) : "",
				language.locale());
	}

	private void answer(HttpServletRequest request, HttpServletResponse response, String competition,
			Function<PageLanguage, byte[]> drawing) throws IOException {
		RenditionKey key = RenditionKey.of(request);
		Rendition picture = this.renditions.get(key, competition,
				(moment) -> Rendition.of("image/png", drawing.apply(key.pageLanguage())));
		Answer.with(picture, request, response);
	}

}
