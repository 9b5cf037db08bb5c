package rimebook.standby;

import java.io.IOException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.Notice;
import rimebook.shared.Actor;

/** Says how it stands with the second place. */
@Controller
@RequestMapping(StandbyConfiguration.PAGE)
class CopyController {

	private final Copying copying;

	private final ServiceLives lives;

	private final LostActs lost;

	CopyController(Copying copying, ServiceLives lives, LostActs lost) {
		this.copying = copying;
		this.lives = lives;
		this.lost = lost;
	}

	@GetMapping
	String show(Model model) {
		model.addAttribute("state", this.copying.state());
		model.addAttribute("folder", this.copying.folder().map((folder) -> folder.path().toString()).orElse(""));
		model.addAttribute("copies", copies());
		model.addAttribute("utc", ZoneOffset.UTC);
		ServiceLife life = this.lives.current();
		model.addAttribute("life", life);
		model.addAttribute("from", life.from());
		model.addAttribute("returned", this.lost.returned());
		model.addAttribute("lost", this.lost.named());
		return "standby/copy";
	}

	/** An act that was lost is settled, whatever is there. */
	@PostMapping("/lost/{life}/{number}")
	String settle(@PathVariable UUID life, @PathVariable long number, Actor actor, RedirectAttributes redirect) {
		this.lost.settle(life, number, actor);
		Notice.give(redirect, "standby.lost.settled-notice");
		return "redirect:" + StandbyConfiguration.PAGE;
	}

	/** A folder that cannot be read now shows none; the state says why. */
	private List<CopyNote> copies() {
		try {
			CopyFolder folder = this.copying.folder().orElse(null);
			return (folder != null) ? folder.notes() : List.of();
		}
		catch (IOException ex) {
			return List.of();
		}
	}

}
