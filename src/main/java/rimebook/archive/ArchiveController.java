package rimebook.archive;

import java.io.IOException;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.shared.Actor;

/**
 * Gives a competition out as a file. It is made beside everything else while the page
 * tells how far it is, and is whole before its first byte is sent.
 */
@Controller
@RequestMapping("/desk/archive/{competition}")
class ArchiveController {

	private final Competitions competitions;

	private final ArchiveMaking making;

	private final ArchiveJobs jobs;

	ArchiveController(Competitions competitions, ArchiveMaking making, ArchiveJobs jobs) {
		this.competitions = competitions;
		this.making = making;
		this.jobs = jobs;
	}

	@GetMapping
	String show(@PathVariable CompetitionId competition, Model model) {
		fill(competition, model);
		return "archive/archive";
	}

	/** How far they are, for the page that waits. */
	@GetMapping("/progress")
	String progress(@PathVariable CompetitionId competition, Model model) {
		fill(competition, model);
		return "archive/archive :: progress";
	}

	private void fill(CompetitionId competition, Model model) {
		CompetitionView view = this.competitions.competition(competition);
		ZoneId zone = view.zone();
		List<ArchiveRow> rows = this.jobs.of(competition).stream().map((job) -> ArchiveRow.of(job, zone)).toList();
		model.addAttribute("competition", view);
		model.addAttribute("archives", rows);
		model.addAttribute("waits", rows.stream().anyMatch(ArchiveRow::isOpen));
	}

	@PostMapping
	String begin(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "false") boolean open,
			Actor actor) {
		this.competitions.competition(competition);
		this.jobs.begin(competition, open ? Variant.PUBLIC : Variant.WHOLE, actor);
		return "redirect:/desk/archive/" + competition;
	}

	/**
	 * A file is asked for by a button and not by a link: who takes one stands on the
	 * record.
	 */
	@PostMapping("/{id}")
	@Nullable String take(@PathVariable CompetitionId competition, @PathVariable UUID id, Actor actor,
			RedirectAttributes redirect, HttpServletResponse response) throws IOException {
		CompetitionView view = this.competitions.competition(competition);
		ArchiveJob job = this.jobs.find(competition, id)
			.filter((known) -> known.progress().stage() == ArchiveJob.Stage.READY)
			.orElse(null);
		if (job == null) {
			redirect.addFlashAttribute("gone", true);
			return "redirect:/desk/archive/" + competition;
		}
		this.making.taken(job, actor);
		send(job, view, response);
		return null;
	}

	@PostMapping("/{id}/stop")
	String stop(@PathVariable CompetitionId competition, @PathVariable UUID id) {
		this.jobs.find(competition, id).ifPresent(ArchiveJob::stop);
		return "redirect:/desk/archive/" + competition;
	}

	private static void send(ArchiveJob job, CompetitionView view, HttpServletResponse response) throws IOException {
		response.setContentType("application/zip");
		response.setContentLengthLong(job.progress().bytes());
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION,
				ContentDisposition.attachment()
					.filename(view.slug() + ((job.variant() == Variant.PUBLIC) ? "-public.zip" : ".zip"))
					.build()
					.toString());
		job.send(response.getOutputStream());
	}

}
