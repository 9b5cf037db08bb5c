package rimebook.rosters.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.pages.PdfPage;
import rimebook.rosters.RosterCheck;
import rimebook.rosters.TeamCheck;
import rimebook.shared.Acts;
import rimebook.shared.NotFoundException;
import rimebook.wording.Figures;

/**
 * Rosters on paper, a sheet or more for each team. Birth dates and numbers stand on it
 * only where the secretary asks for that.
 */
@Controller
class RosterPaperController {

	private final RosterCheck check;

	private final Competitions competitions;

	private final RosterPages pages;

	private final PdfPage paper;

	private final Acts acts;

	RosterPaperController(RosterCheck check, Competitions competitions, RosterPages pages, PdfPage paper, Acts acts) {
		this.check = check;
		this.competitions = competitions;
		this.pages = pages;
		this.paper = paper;
		this.acts = acts;
	}

	/**
	 * Names and parts.
	 * @param entry of one team; of all that take part where none is named
	 */
	@GetMapping("/desk/rosters/paper/{competition}/rosters.pdf")
	ResponseEntity<byte[]> plain(@PathVariable CompetitionId competition,
			@RequestParam(required = false) @Nullable EntryId entry) {
		return document(competition, entry, false);
	}

	/** As the former, with birth dates and membership numbers. */
	@GetMapping("/desk/rosters/files/{competition}/with-birth-dates.pdf")
	ResponseEntity<byte[]> withBirthDates(@PathVariable CompetitionId competition,
			@RequestParam(required = false) @Nullable EntryId entry) {
		return document(competition, entry, true);
	}

	private ResponseEntity<byte[]> document(CompetitionId id, @Nullable EntryId entry, boolean births) {
		CompetitionView competition = this.competitions.competition(id);
		List<TeamCheck> teams = teams(id, entry);
		byte[] document = this.paper.of("rosters/roster-paper", Locale.ENGLISH,
				Map.of("competition", competition, "teams", teams, "births", births, "clubs", this.pages.clubNames(),
						"made", this.acts.now(), "figures", new Figures(Locale.ENGLISH)));
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline()
						.filename(competition.slug() + (births ? "-rosters-with-birth-dates.pdf" : "-rosters.pdf"))
						.build()
						.toString())
			.body(document);
	}

	private List<TeamCheck> teams(CompetitionId id, @Nullable EntryId entry) {
		if (entry == null) {
			return this.check.of(id);
		}
		TeamCheck team = this.check.of(entry);
		if (!team.event().competition().equals(id)) {
			throw NotFoundException.of("entry", entry);
		}
		return List.of(team);
	}

}
