package rimebook.performances;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.shared.SubjectNames;

/** Performances by number and team. */
@Component
@Transactional(readOnly = true)
class PerformanceSubjects implements SubjectNames {

	private final SegmentRun run;

	private final Entries entries;

	private final Whereabouts whereabouts;

	PerformanceSubjects(SegmentRun run, Entries entries, Whereabouts whereabouts) {
		this.run = run;
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("performance") ? Optional.of(name(this.run.performance(new PerformanceId(id))))
				: Optional.empty();
	}

	private SubjectNames.Named name(PerformanceView performance) {
		return this.whereabouts.of(performance.segment(),
				"No. " + performance.startNumber() + " " + this.entries.entry(performance.entry()).team().name());
	}

}
