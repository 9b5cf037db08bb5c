package rimebook.managers.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.accounts.TeamLinks;
import rimebook.managers.OwnRoster;
import rimebook.pages.Given;
import rimebook.pages.Submission;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The roster in the hands of those who manage the team. A form always carries the version
 * of what its page shows: whoever comes second is shown what is there now beside what
 * they typed, and decides by sending it again.
 */
@Controller
@RequestMapping("/manager/roster")
class OwnRosterController {

	private final OwnRoster roster;

	private final OwnFrame frame;

	OwnRosterController(OwnRoster roster, OwnFrame frame) {
		this.roster = roster;
		this.frame = frame;
	}

	@GetMapping
	String show(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		model.addAttribute("personForm", PersonForm.EMPTY);
		return page(pass, request, response, language, model);
	}

	@PostMapping
	String add(TeamLinks.Pass pass, @ModelAttribute("personForm") PersonForm form, BindingResult result, Actor actor,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.roster.add(pass, form.facts(), form.part(), actor))) {
			return page(pass, request, response, language, model);
		}
		return "redirect:/manager/roster?done=added";
	}

	@GetMapping("/{place}")
	String person(TeamLinks.Pass pass, @PathVariable RosterView.PlaceId place, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		return personPage(pass, place, request, response, language, model);
	}

	@PostMapping("/{place}")
	String mend(TeamLinks.Pass pass, @PathVariable RosterView.PlaceId place,
			@ModelAttribute("personForm") PersonForm form, BindingResult result,
			@RequestParam(defaultValue = "0") int version, Actor actor, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.roster.mend(pass, place, version, form.facts(), actor))) {
			return personPage(pass, place, request, response, language, model);
		}
		return "redirect:/manager/roster?done=kept";
	}

	@PostMapping("/{place}/part")
	String become(TeamLinks.Pass pass, @PathVariable RosterView.PlaceId place,
			@ModelAttribute("partForm") PartForm form, BindingResult result,
			@RequestParam(defaultValue = "0") int version, Actor actor, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result,
				() -> this.roster.become(pass, place, version, PersonForm.part(form.role()), actor))) {
			return personPage(pass, place, request, response, language, model);
		}
		return "redirect:/manager/roster?done=" + (PlaceRole.LEFT.name().equals(form.role()) ? "removed" : "kept");
	}

	@PostMapping("/{place}/consent")
	String consent(TeamLinks.Pass pass, @PathVariable RosterView.PlaceId place,
			@ModelAttribute("consentForm") ConsentForm form, BindingResult result,
			@RequestParam(defaultValue = "0") int version, Actor actor, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> form.keep(pass, place, version, this.roster, actor))) {
			return personPage(pass, place, request, response, language, model);
		}
		return "redirect:/manager/roster?done=" + (form.isGiven() ? "agreed" : "disagreed");
	}

	private String page(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		this.frame.fill(pass, "/manager/roster", request, response, language, model);
		List<OwnRoster.Person> people = this.roster.people(pass);
		model.addAttribute("people", people.stream().filter((one) -> one.role() != PlaceRole.LEFT).toList());
		model.addAttribute("gone", people.stream().filter((one) -> one.role() == PlaceRole.LEFT).toList());
		model.addAttribute("refusal", this.roster.refusal(pass).orElse(Sentence.NONE));
		model.addAttribute("parts", List.of(PlaceRole.SKATES, PlaceRole.ALTERNATE));
		return "managers/roster";
	}

	private String personPage(TeamLinks.Pass pass, RosterView.PlaceId id, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		OwnRoster.Person person = this.roster.person(pass, id);
		this.frame.fill(pass, "/manager/roster/" + id, request, response, language, model);
		model.addAttribute("person", person);
		model.addAttribute("mayMend", this.roster.isOwn(pass, id));
		model.addAttribute("refusal", this.roster.refusal(pass).orElse(Sentence.NONE));
		model.addAttribute("parts", PlaceRole.values());
		addIfMissing(model, "personForm", PersonForm.of(person));
		addIfMissing(model, "partForm", new PartForm(person.role().name()));
		addIfMissing(model, "consentForm", ConsentForm.of(person));
		return "managers/person";
	}

	private static void addIfMissing(Model model, String name, Object form) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	/** The part somebody is to have, as chosen. */
	record PartForm(@Nullable String role) {
	}

	/**
	 * Whether the name may be printed, as typed.
	 *
	 * @param printed "yes" where it may
	 * @param on year-month-day
	 */
	record ConsentForm(@Nullable String printed, @Nullable String guardian, @Nullable String on) {

		static ConsentForm of(OwnRoster.Person person) {
			return new ConsentForm(person.consent().isGiven() ? "yes" : "no", person.consent().guardian(),
					(person.consent().on() != null) ? person.consent().on().toString() : "");
		}

		boolean isGiven() {
			return "yes".equals(this.printed);
		}

		void keep(TeamLinks.Pass pass, RosterView.PlaceId place, int version, OwnRoster roster, Actor actor) {
			LocalDate day = PersonForm.day("on", this.on);
			if (isGiven() && day == null) {
				throw RuleViolationException.ofField("field-missing", "on", Sentence.of("shared.field.missing"));
			}
			roster.consent(pass, place, version, Given.text(this.guardian), isGiven() ? day : null, actor);
		}

	}

}
