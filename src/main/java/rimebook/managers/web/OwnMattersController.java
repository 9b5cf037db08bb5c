package rimebook.managers.web;

import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

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
import rimebook.competition.SegmentId;
import rimebook.managers.OwnMatters;
import rimebook.managers.OwnTeam;
import rimebook.pages.Choice;
import rimebook.pages.Given;
import rimebook.pages.Submission;
import rimebook.protests.ProtestView;
import rimebook.rulings.QuestionView;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** What the team says to the officials: questions and protests. */
@Controller
@RequestMapping("/manager")
class OwnMattersController {

	private final OwnMatters matters;

	private final OwnFrame frame;

	OwnMattersController(OwnMatters matters, OwnFrame frame) {
		this.matters = matters;
		this.frame = frame;
	}

	@GetMapping("/questions")
	String questions(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		model.addAttribute("questionForm", new QuestionForm("", QuestionView.RulingTopic.ELEMENT.name(), "", ""));
		return questionsPage(pass, request, response, language, model);
	}

	@PostMapping("/questions")
	String ask(TeamLinks.Pass pass, @ModelAttribute("questionForm") QuestionForm form, BindingResult result,
			Actor actor, HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.matters.ask(pass, form.typed(), actor))) {
			return questionsPage(pass, request, response, language, model);
		}
		return "redirect:/manager/questions?done=asked";
	}

	private String questionsPage(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response,
			Locale language, Model model) {
		OwnTeam.About about = this.frame.fill(pass, "/manager/questions", request, response, language, model);
		model.addAttribute("questions", this.matters.questions(pass));
		model.addAttribute("topics", QuestionView.RulingTopic.values());
		model.addAttribute("segments",
				Stream
					.concat(Stream.of(new Choice("", "–")),
							about.takingPlace().stream().map((one) -> Choice.of(one.id(), one.name())))
					.toList());
		return "managers/questions";
	}

	@GetMapping("/protests")
	String protests(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		this.frame.fill(pass, "/manager/protests", request, response, language, model);
		model.addAttribute("hearings", this.matters.hearings(pass));
		return "managers/protests";
	}

	@GetMapping("/protests/{segment}")
	String protestForm(TeamLinks.Pass pass, @PathVariable SegmentId segment, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		model.addAttribute("protestForm", new ProtestForm(null, "", ""));
		return protestPage(pass, segment, request, response, language, model);
	}

	@PostMapping("/protests/{segment}")
	String protest(TeamLinks.Pass pass, @PathVariable SegmentId segment,
			@ModelAttribute("protestForm") ProtestForm form, BindingResult result,
			@RequestParam(defaultValue = "0") int posting, Actor actor, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		boolean[] heard = { true };
		if (Submission.refused(result,
				() -> heard[0] = this.matters.protest(pass, segment, form.typed(), posting, actor)
					.state() != ProtestView.State.REFUSED)) {
			return protestPage(pass, segment, request, response, language, model);
		}
		return "redirect:/manager/protests?done=" + (heard[0] ? "filed" : "refused");
	}

	private String protestPage(TeamLinks.Pass pass, SegmentId segment, HttpServletRequest request,
			HttpServletResponse response, Locale language, Model model) {
		this.frame.fill(pass, "/manager/protests/" + segment, request, response, language, model);
		model.addAttribute("hearing", this.matters.hearing(pass, segment));
		model.addAttribute("categories", ProtestView.ProtestCategory.values());
		return "managers/protest";
	}

	/** A question as typed. */
	record QuestionForm(@Nullable String segment, @Nullable String topic, @Nullable String question,
			@Nullable String askedBy) {

		OwnMatters.Question typed() {
			SegmentId about = Given.text(this.segment).isEmpty() ? null : Given.read("segment", this.segment,
					(text) -> new SegmentId(UUID.fromString(text)), Sentence.of("rulings.segment-missing"));
			return new OwnMatters.Question(about, Given.read("topic", this.topic, QuestionView.RulingTopic::valueOf,
					Sentence.of("rulings.topic-missing")), Given.text(this.question), Given.text(this.askedBy));
		}

	}

	/** A protest as typed. */
	record ProtestForm(@Nullable String category, @Nullable String text, @Nullable String filedBy) {

		OwnMatters.Protest typed() {
			return new OwnMatters.Protest(Given.read("category", this.category, ProtestView.ProtestCategory::valueOf,
					Sentence.of("protests.category-missing")), Given.text(this.text), Given.text(this.filedBy));
		}

	}

}
