package rimebook.panels.web;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.Submission;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;

/** The slips that judges find at their seats, to be printed and cut. */
@Controller
class SlipsController {

	private final Panels panels;

	private final Competitions competitions;

	private final SlipSettings settings;

	private final LanAddresses lan;

	SlipsController(Panels panels, Competitions competitions, SlipSettings settings, LanAddresses lan) {
		this.panels = panels;
		this.competitions = competitions;
		this.settings = settings;
		this.lan = lan;
	}

	@GetMapping("/desk/panel/{event}/slips")
	String slips(@PathVariable("event") EventId id, @RequestParam(defaultValue = "") String address, Model model) {
		EventView event = this.competitions.event(id);
		List<SeatView> judges = this.panels.judges(id);
		SlipForm form = new SlipForm(address.isBlank() ? usualAddress() : address);
		BindingResult errors = new BeanPropertyBindingResult(form, "form");
		model.addAttribute("event", event);
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("form", form);
		model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", errors);
		model.addAttribute("withoutCode", withoutCode(event, judges));
		Submission.refused(errors, () -> fill(model, JoinAddress.of(form.address()), judges));
		return "panels/slips";
	}

	private void fill(Model model, JoinAddress address, List<SeatView> judges) {
		model.addAttribute("address", address);
		model.addAttribute("slips",
				judges.stream().filter((seat) -> seat.code() != null).map((seat) -> Slip.of(seat, address)).toList());
		model.addAttribute("local", address.isLocal());
		model.addAttribute("reachable",
				address.isLocal() ? this.lan.all().stream().map(address::at).toList() : List.of());
	}

	/** How many judges' seats have no code yet, be they there or not. */
	private static long withoutCode(EventView event, List<SeatView> judges) {
		return event.judges() - judges.stream().filter((seat) -> seat.code() != null).count();
	}

	/**
	 * The address that is set for this house, else the one this page was opened under.
	 */
	private String usualAddress() {
		return this.settings.address().isBlank()
				? ServletUriComponentsBuilder.fromCurrentContextPath().build().toUriString() : this.settings.address();
	}

}
