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
import org.springframework.validation.BindingResult;

import rimebook.pages.Choice;
import rimebook.panels.OfficialView;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.panels.SeatConflict;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.wording.Sentence;

/** The places of a panel, and who may be given one. */
@Component
class SeatRows {

	private final Panels panels;

	private final Clock clock;

	private final MessageSource messages;

	SeatRows(Panels panels, Clock clock, MessageSource messages) {
		this.panels = panels;
		this.clock = clock;
		this.messages = messages;
	}

	/** Every place with who sits there or was chosen. */
	List<SeatRow> of(PanelView panel, PanelForm form, BindingResult errors) {
		Map<SeatId, List<Sentence>> conflicts = this.panels.conflicts(panel.event())
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
	List<Choice> officials() {
		List<OfficialView> register = this.panels.officials();
		String choose = this.messages.getMessage("panels.give.choose", null, LocaleContextHolder.getLocale());
		return register.isEmpty() ? List.of()
				: Stream.concat(Stream.of(new Choice("", choose)), register.stream().map(SeatRows::choice)).toList();
	}

	private static SeatChoice choice(String place, PanelForm form, BindingResult errors) {
		return new SeatChoice(form.chosen(place), form.reasonFor(place), errors.getFieldError(PanelForm.field(place)));
	}

	private static Choice choice(OfficialView official) {
		return Choice.of(official.id(), official.name() + (official.club().isEmpty() ? "" : ", " + official.club())
				+ (official.qualification().isEmpty() ? "" : ", " + official.qualification()));
	}

}
