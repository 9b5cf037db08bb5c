package rimebook.demo;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Collectors;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;

import static rimebook.demo.DemoCrew.ACCOUNTANT;
import static rimebook.demo.DemoCrew.REFEREE;

/** Fills the panels of the invented competition. */
@Component
@Profile("demo")
class DemoSeating {

	private final Panels panels;

	DemoSeating(Panels panels) {
		this.panels = panels;
	}

	/** Write everybody into the register. */
	void register() {
		DemoFiles.officials().forEach((official) -> this.panels.register(official, REFEREE));
	}

	/**
	 * Seat the crew, who sign, and the other officials in the order of the register,
	 * leaving out who is of a team's club.
	 */
	void seat(EventView event, int from) {
		List<OfficialView> register = this.panels.officials();
		List<OfficialView> others = register.stream().filter((official) -> !isCrew(official)).toList();
		Deque<OfficialView> free = new ArrayDeque<>(others.subList(from, others.size()));
		seat(event, SeatKind.REFEREE, 1, named(register, REFEREE));
		seat(event, SeatKind.ACCOUNTANT, 1, named(register, ACCOUNTANT));
		for (int number = 1; number <= event.judging().judges(); number++) {
			seat(event, SeatKind.JUDGE, number, free);
		}
		if (!event.isJudgedByPoints()) {
			seat(event, SeatKind.SUBSTITUTE, 1, free);
		}
		this.panels.issueCodes(event.id(), REFEREE);
	}

	private static boolean isCrew(OfficialView official) {
		return REFEREE.goesBy(official.name()) || ACCOUNTANT.goesBy(official.name());
	}

	private static Deque<OfficialView> named(List<OfficialView> register, Actor crew) {
		return register.stream()
			.filter((official) -> crew.goesBy(official.name()))
			.collect(Collectors.toCollection(ArrayDeque::new));
	}

	private void seat(EventView event, SeatKind kind, int number, Deque<OfficialView> free) {
		while (true) {
			try {
				this.panels.seat(new Panels.SeatOfficial(event.id(), kind, number, free.removeFirst().id(), ""),
						REFEREE);
				return;
			}
			catch (RuleViolationException ex) {
				// Of the club of a team in this event: the next one on the register sits.
			}
		}
	}

}
