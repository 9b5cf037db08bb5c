package rimebook.music.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.music.Music;
import rimebook.music.MusicDesk;
import rimebook.music.MusicPlays;
import rimebook.music.MusicView;
import rimebook.pages.ContentPolicy;
import rimebook.pages.Notice;
import rimebook.shared.Actor;

/**
 * The desk from which a segment's music is played. Its page loads every file before the
 * segment begins and needs nobody afterwards.
 */
@Controller
@RequestMapping("/desk/music/desk/{segment}")
class MusicDeskController {

	/** What was loaded is played from the browser's memory. */
	private static final String POLICY = ContentPolicy.DIRECTIVES + "; media-src 'self' blob:";

	private final MusicDesk desk;

	private final Music music;

	private final MusicPlays plays;

	private final Competitions competitions;

	MusicDeskController(MusicDesk desk, Music music, MusicPlays plays, Competitions competitions) {
		this.desk = desk;
		this.music = music;
		this.plays = plays;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable SegmentId segment, Model model, HttpServletResponse response) {
		response.setHeader("Content-Security-Policy", POLICY);
		into(segment, model);
		return "music/desk";
	}

	/** The list alone, for a page that is open. */
	@GetMapping("/lines")
	String lines(@PathVariable SegmentId segment, Model model) {
		into(segment, model);
		return "music/desk :: lines";
	}

	private void into(SegmentId segment, Model model) {
		MusicDesk.View view = this.desk.of(segment);
		CompetitionView competition = this.competitions.competition(view.event().competition());
		model.addAttribute("desk", view);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("open", competition.state().isOpenToChange() && !view.event().isCancelled(segment));
	}

	/** Told by the page as often as it takes. */
	@PostMapping("/played")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void played(@PathVariable SegmentId segment, @RequestParam UUID play, @RequestParam MusicView.VersionId version,
			@RequestParam Instant startedAt, Actor actor) {
		this.plays.note(new MusicPlays.NotePlay(play, version, startedAt), actor);
	}

	@PostMapping("/on-site")
	String onSite(@PathVariable SegmentId segment, @RequestParam EntryId entry, @RequestParam boolean onSite,
			Actor actor, RedirectAttributes redirect) {
		this.music.onSite(entry, segment, onSite, actor);
		Notice.give(redirect, onSite ? "music.desk.on-site.noted" : "music.desk.on-site.taken-back");
		return "redirect:/desk/music/desk/" + segment;
	}

	/** All files as they are, named so that any player has them in starting order. */
	@GetMapping("/all.zip")
	void zip(@PathVariable SegmentId segment, HttpServletResponse response) throws IOException {
		MusicDesk.View view = this.desk.of(segment);
		CompetitionView competition = this.competitions.competition(view.event().competition());
		String name = competition.slug() + "-" + view.event().slug() + "-" + view.segment().slug() + "-music.zip";
		response.setContentType("application/zip");
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION,
				ContentDisposition.attachment().filename(name).build().toString());
		try (ZipOutputStream zip = new ZipOutputStream(response.getOutputStream(), StandardCharsets.UTF_8)) {
			// Music is packed already, or would play no sooner.
			zip.setLevel(Deflater.NO_COMPRESSION);
			for (MusicDesk.Line line : view.lines()) {
				if (line.isPlayable()) {
					add(line, zip);
				}
			}
		}
	}

	private void add(MusicDesk.Line line, ZipOutputStream zip) throws IOException {
		Music.Content content = this.music.content(line.version().id());
		zip.putNextEntry(new ZipEntry(line.fileName()));
		try (InputStream bytes = content.bytes().getInputStream()) {
			bytes.transferTo(zip);
		}
		zip.closeEntry();
	}

}
