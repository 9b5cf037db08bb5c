package rimebook.panels.web;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.Choice;
import rimebook.panels.OfficialView;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.panels.SeatConflict;
import rimebook.panels.SeatId;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;

/** Gathers what the page of one event's panel shows. */
@Component
class PanelPage {

	private final Panels panels;

	private final Competitions competitions;

	private final Clock clock;

	PanelPage(Panels panels, Competitions competitions, Clock clock) {
		this.panels = panels;
		this.competitions = competitions;
		this.clock = clock;
	}

	String show(EventId id, Model model) {
		EventView event = this.competitions.event(id);
		PanelView panel = this.panels.ofEvent(id);
		List<SeatRow> rows = rows(panel);
		model.addAttribute("event", event);
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("panel", panel);
		model.addAttribute("rows", rows);
		model.addAttribute("places", rows.stream().filter((row) -> !row.taken()).map(PanelPage::choice).toList());
		model.addAttribute("officials", this.panels.officials().stream().map(PanelPage::choice).toList());
		return "panels/panel";
	}

	private List<SeatRow> rows(PanelView panel) {
		Map<SeatId, List<String>> conflicts = this.panels.conflicts(panel.event())
			.stream()
			.collect(Collectors.toMap(SeatConflict::seat, SeatConflict::teams));
		Instant now = this.clock.instant();
		return this.panels.places(panel.event()).stream().map((place) -> {
			Optional<SeatView> seat = panel.seats().stream().filter(place::isOf).findFirst();
			return SeatRow.of(place, seat, seat.map(SeatView::id).map(conflicts::get).orElse(List.of()), now);
		}).toList();
	}

	private static Choice choice(SeatRow row) {
		return new Choice(row.place(), row.label());
	}

	private static Choice choice(OfficialView official) {
		return Choice.of(official.id(), official.name() + (official.club().isEmpty() ? "" : ", " + official.club())
				+ (official.qualification().isEmpty() ? "" : ", " + official.qualification()));
	}

}
