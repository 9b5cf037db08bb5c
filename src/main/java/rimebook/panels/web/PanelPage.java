package rimebook.panels.web;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.Choice;
import rimebook.panels.OfficialView;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.panels.SeatConflict;
import rimebook.panels.SeatId;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.panels.SeatView;

/** Gathers what the page of one event's panel shows. */
@Component
class PanelPage {

	private final Panels panels;

	private final Competitions competitions;

	private final SeatGuesses guesses;

	private final SeatTakeoverQuestions questions;

	private final Clock clock;

	private final MessageSource messages;

	private final PanelCopy copy;

	PanelPage(Panels panels, Competitions competitions, SeatGuesses guesses, SeatTakeoverQuestions questions,
			Clock clock, MessageSource messages, PanelCopy copy) {
		this.copy = copy;
		this.panels = panels;
		this.competitions = competitions;
		this.guesses = guesses;
		this.questions = questions;
		this.clock = clock;
		this.messages = messages;
	}

	/** The page with what was chosen and what was wrong with it. */
	String show(EventId id, PanelForm form, BindingResult errors, Model model) {
		EventView event = this.competitions.event(id);
		PanelView panel = this.panels.ofEvent(id);
		List<SeatRow> rows = rows(panel, form, errors);
		model.addAttribute("form", form);
		model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", errors);
		model.addAttribute("event", event);
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("panel", panel);
		model.addAttribute("guesses", this.guesses.recent());
		model.addAttribute("questions", this.questions.ofEvent(id));
		model.addAttribute("zone", this.competitions.competition(event.competition()).zone());
		model.addAttribute("rows", rows);
		model.addAttribute("full", rows.stream().allMatch(SeatRow::taken));
		model.addAttribute("others", this.copy.offered(event));
		model.addAttribute("officials", officials());
		return "panels/panel";
	}

	private List<SeatRow> rows(PanelView panel, PanelForm form, BindingResult errors) {
		Map<SeatId, List<String>> conflicts = this.panels.conflicts(panel.event())
			.stream()
			.collect(Collectors.toMap(SeatConflict::seat, SeatConflict::unsettled));
		Instant now = this.clock.instant();
		return this.panels.places(panel.event()).stream().map((place) -> {
			Optional<SeatView> seat = panel.seats().stream().filter(place::isOf).findFirst();
			return SeatRow.of(place, seat, seat.map(SeatView::id).map(conflicts::get).orElse(List.of()), now,
					choice(PanelForm.value(place), form, errors));
		}).toList();
	}

	/** Everybody in the register behind a line that asks to choose; empty for nobody. */
	private List<Choice> officials() {
		List<OfficialView> register = this.panels.officials();
		String choose = this.messages.getMessage("panels.give.choose", null, LocaleContextHolder.getLocale());
		return register.isEmpty() ? List.of()
				: Stream.concat(Stream.of(new Choice("", choose)), register.stream().map(PanelPage::choice)).toList();
	}

	private static SeatChoice choice(String place, PanelForm form, BindingResult errors) {
		return new SeatChoice(form.chosen(place), form.reasonFor(place), errors.getFieldError(PanelForm.field(place)));
	}

	private static Choice choice(OfficialView official) {
		return Choice.of(official.id(), official.name() + (official.club().isEmpty() ? "" : ", " + official.club())
				+ (official.qualification().isEmpty() ? "" : ", " + official.qualification()));
	}

}
