package rimebook.live;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.shared.NotFoundException;

/** The one gate to competitions for visitors: a planned one is not there for them. */
@Component
class Published {

	private final Competitions competitions;

	Published(Competitions competitions) {
		this.competitions = competitions;
	}

	List<CompetitionView> competitions() {
		return this.competitions.all().stream().filter(Published::isPublic).toList();
	}

	/**
	 * The competition of that address.
	 * @throws NotFoundException if there is none or it is only planned; both look the
	 * same
	 */
	CompetitionView competition(String slug) {
		CompetitionView competition = this.competitions.bySlug(slug);
		if (!isPublic(competition)) {
			throw NotFoundException.of("competition", slug);
		}
		return competition;
	}

	List<EventView> events(CompetitionView competition) {
		return this.competitions.events(competition.id());
	}

	EventView event(CompetitionView competition, String slug) {
		return this.competitions.eventBySlug(competition.id(), slug);
	}

	SegmentView segment(EventView event, String slug) {
		return event.segments()
			.stream()
			.filter((segment) -> segment.slug().equals(slug))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("segment", slug));
	}

	private static boolean isPublic(CompetitionView competition) {
		return competition.state() != CompetitionState.PLANNED;
	}

}
