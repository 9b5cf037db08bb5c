package rimebook.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.OpenHouse;
import rimebook.accounts.People;
import rimebook.accounts.Role;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.rehearsal.KnownCodes;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;

/** The invented people of the demonstration, and how anybody can be one of them. */
@Component
@Profile("demo")
class DemoCrew implements OpenHouse {

	private static final Log log = LogFactory.getLog(DemoCrew.class);

	static final Actor SECRETARY = new Actor("Ines Fjell", "secretary", "demo");

	static final Actor REFEREE = new Actor("Runa Halvard", "referee", "demo");

	static final Actor ACCOUNTANT = new Actor("Tomas Quill", "accountant", "demo");

	static final Actor TECHNICAL = new Actor("Signe Rask", "technical", "demo");

	private static final List<Member> CREW = List.of(
			new Member("Administrator",
					new DraftPerson("admin", "Ola Stein", Set.of(Role.ADMINISTRATOR), "snow-on-the-roof")),
			new Member("Secretary",
					new DraftPerson("secretary", SECRETARY.name(), Set.of(Role.SECRETARY), "ink-on-the-list")),
			new Member("Referee", new DraftPerson("referee", REFEREE.name(), Set.of(Role.REFEREE), "whistle-and-rule")),
			new Member("Accountant",
					new DraftPerson("accountant", ACCOUNTANT.name(), Set.of(Role.ACCOUNTANT), "sums-come-out-even")),
			new Member("Technical controller",
					new DraftPerson("technical", TECHNICAL.name(), Set.of(Role.TECHNICAL), "edges-and-levels")),
			new Member("Announcer",
					new DraftPerson("announcer", "Vera Klang", Set.of(Role.ANNOUNCER), "voice-over-the-ice")));

	private final People people;

	private final Competitions competitions;

	private final Panels panels;

	private final KnownCodes codes;

	DemoCrew(People people, Competitions competitions, Panels panels, KnownCodes codes) {
		this.codes = codes;
		this.people = people;
		this.competitions = competitions;
		this.panels = panels;
	}

	/** Let everybody in, once. */
	void arrive() {
		if (this.people.all().isEmpty()) {
			CREW.forEach((member) -> this.people.add(member.person(), Actor.system()));
		}
	}

	/**
	 * Learn the codes of the seats before anybody joins; they are made anew where an
	 * earlier start made them.
	 */
	void readSlips(CompetitionId competition) {
		this.competitions.events(competition)
			.stream()
			.flatMap((event) -> this.panels.judges(event.id()).stream())
			.filter(SeatView::hasCode)
			.forEach(this::readSlip);
	}

	private void readSlip(SeatView seat) {
		try {
			this.codes.orNew(seat);
		}
		catch (RimebookException ex) {
			log.info("The code of " + seat.label() + " stays unknown: " + ex.getMessage());
		}
	}

	@Override
	public List<Offer> offers() {
		List<Offer> offers = new ArrayList<>();
		CREW.forEach((member) -> offers
			.add(new Offer(member.duty(), member.person().signInName(), member.person().password())));
		for (CompetitionView competition : this.competitions.all()) {
			this.competitions.events(competition.id()).forEach((event) -> offers.addAll(seats(event)));
		}
		return offers;
	}

	private List<Offer> seats(EventView event) {
		return this.panels.judges(event.id()).stream().flatMap((seat) -> seat(event, seat).stream()).toList();
	}

	private Optional<Offer> seat(EventView event, SeatView seat) {
		return this.codes.of(seat).map((code) -> new Offer(seat.label() + ", " + event.name(), "", code));
	}

	private record Member(String duty, DraftPerson person) {
	}

}
