package rimebook.review.web;

import java.nio.charset.StandardCharsets;

import org.springframework.context.annotation.Bean;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.pages.DeskEntry;
import rimebook.review.PanelReviews;
import rimebook.review.ReviewFiles;

/** How the panels agree, for the referee alone. */
@Controller
@RequestMapping("/desk/review")
class ReviewController {

	private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

	private final PanelReviews reviews;

	private final ReviewFiles files;

	private final Competitions competitions;

	ReviewController(PanelReviews reviews, ReviewFiles files, Competitions competitions) {
		this.reviews = reviews;
		this.files = files;
		this.competitions = competitions;
	}

	@GetMapping
	String list(Model model) {
		model.addAttribute("competitions",
				this.competitions.all()
					.stream()
					.filter((competition) -> competition.state().compareTo(CompetitionState.RUNNING) >= 0)
					.toList());
		return "review/list";
	}

	@GetMapping("/{competition}")
	String ofCompetition(@PathVariable CompetitionId competition, Model model) {
		model.addAttribute("review", this.reviews.of(competition));
		return "review/competition";
	}

	@GetMapping("/events/{event}")
	String ofEvent(@PathVariable EventId event, Model model) {
		model.addAttribute("review", this.reviews.of(event));
		return "review/event";
	}

	@GetMapping("/events/{event}/judges.csv")
	ResponseEntity<String> judges(@PathVariable EventId event) {
		return file("judges", this.files.judges(event));
	}

	@GetMapping("/events/{event}/marks.csv")
	ResponseEntity<String> marks(@PathVariable EventId event) {
		return file("marks", this.files.marks(event));
	}

	private static ResponseEntity<String> file(String name, String text) {
		return ResponseEntity.ok()
			.contentType(CSV)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("panel-review-" + name + ".csv").build().toString())
			.body(text);
	}

	@Bean
	static DeskEntry reviewDeskEntry() {
		return new DeskEntry(650, "/desk/review", "review");
	}

}
