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

	private final FilesBack back;

	CopyController(Copying copying, ServiceLives lives, LostActs lost, FilesBack back) {
		this.back = back;
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
		model.addAttribute("coming", this.back.coming());
		model.addAttribute("lost", Lost.of(this.lost.named(), this.lost.returned()));
		return "standby/copy";
	}

	/** An act that was lost is settled, whatever is there. */
	@PostMapping("/lost/{life}/{number}")
	String settle(@PathVariable UUID life, @PathVariable long number, Actor actor, RedirectAttributes redirect) {
		this.lost.settle(life, number, actor);
		Notice.give(redirect, "standby.lost.settled-notice");
		return "redirect:" + StandbyConfiguration.PAGE;
	}

	/**
	 * What was lost, the cards apart: they come back by themselves, everything else does
	 * not.
	 *
	 * @param returned how many cards came back
	 */
	record Lost(List<LostAct> acts, List<LostAct> cards, int returned) {

		static Lost of(List<LostAct> all, int returned) {
			return new Lost(all.stream().filter((act) -> !act.isCard()).toList(),
					all.stream().filter(LostAct::isCard).toList(), returned);
		}

		public boolean isNothing() {
			return this.acts.isEmpty() && this.cards.isEmpty();
		}

		public long openActs() {
			return this.acts.stream().filter(LostAct::isOpen).count();
		}

		public long missingCards() {
			return this.cards.stream().filter(LostAct::isOpen).count();
		}

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
