package rimebook.live;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionView;
import rimebook.pages.PdfPage;
import rimebook.shared.NotFoundException;
import rimebook.timetable.TimetableVersion;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.Programmed;
import rimebook.wording.Figures;

/**
 * The published timetable on paper: a day with all its surfaces, and one surface in large
 * letters for a door. The same version is the same bytes in each language.
 */
@Controller
@RequestMapping("/follow/{competition}/timetable")
class TimetablePaperController {

	private static final String DAY = "/{day:[0-9]{4}-[0-9]{2}-[0-9]{2}}";

	private final RenditionCache renditions;

	private final Published published;

	private final TimetableVersions versions;

	private final PdfPage paper;

	TimetablePaperController(RenditionCache renditions, Published published, TimetableVersions versions,
			PdfPage paper) {
		this.renditions = renditions;
		this.published = published;
		this.versions = versions;
		this.paper = paper;
	}

	@GetMapping(DAY + ".pdf")
	void day(@PathVariable String competition,
			@PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate day, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(competition, day, 0, request, response);
	}

	@GetMapping(DAY + "/door-{surface:[1-9]}.pdf")
	void door(@PathVariable String competition,
			@PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate day, @PathVariable int surface,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(competition, day, surface, request, response);
	}

	private void answer(String competition, LocalDate day, int surface, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		RenditionKey key = RenditionKey.of(request);
		Rendition sheet = this.renditions.get(key, competition, (moment) -> Rendition.of("application/pdf",
				lay(this.published.competition(competition), day, surface, key.pageLanguage().locale())));
		Answer.with(sheet, request, response);
	}

	/**
	 * @param surface 0 for all
	 */
	private byte[] lay(CompetitionView competition, LocalDate day, int surface, Locale language) {
		TimetableVersion version = this.versions.latest(competition.id())
			.orElseThrow(() -> NotFoundException.of("timetable", competition.slug()));
		List<Programmed.Ice> ice = version.timetable()
			.day(day)
			.map(Programmed.Day::ice)
			.filter((surfaces) -> surface <= surfaces.size())
			.map((surfaces) -> (surface == 0) ? surfaces : surfaces.subList(surface - 1, surface))
			.orElseThrow(() -> NotFoundException.of("timetable", day));
		return this.paper
			.of("live/timetable-paper", language,
					Map.of("competition", competition, "zone", competition.zone(), "version", version, "day", day,
							"ice", ice, "door", surface > 0, "figures", new Figures(language), "size", "A4"),
					version.act().at());
	}

}
