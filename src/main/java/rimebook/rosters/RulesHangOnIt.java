package rimebook.rosters;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/** An event whose rules about rosters are on the record stays. */
@Component
class RulesHangOnIt implements CancellationGuard {

	private final EventRulesRepository rules;

	RulesHangOnIt(EventRulesRepository rules) {
		this.rules = rules;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		boolean whole = segments.size() == event.segments().size();
		return (whole && this.rules.existsById(event.id().value()))
				? Optional.of(Sentence.of("rosters.rules-set", event.name())) : Optional.empty();
	}

}
