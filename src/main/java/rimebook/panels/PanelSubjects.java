package rimebook.panels;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.shared.SubjectNames;

/** Officials by name, seats by their label. */
@Component
@Transactional(readOnly = true)
class PanelSubjects implements SubjectNames {

	private final Panels panels;

	private final Whereabouts whereabouts;

	PanelSubjects(Panels panels, Whereabouts whereabouts) {
		this.panels = panels;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "official" -> Optional.of(SubjectNames.Named.of(this.panels.official(new OfficialView.Id(id)).name()));
			case "seat" -> Optional.of(name(this.panels.seat(new SeatId(id))));
			default -> Optional.empty();
		};
	}

	private SubjectNames.Named name(SeatView seat) {
		return this.whereabouts.of(seat.event(), seat.label());
	}

}
