package rimebook.protests;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.SegmentId;
import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.performances.SegmentRun;
import rimebook.shared.SubjectNames;

/** Protests and corrections by the team they are about. */
@Component
@Transactional(readOnly = true)
class ProtestSubjects implements SubjectNames {

	private final ProtestRepository protests;

	private final Corrections corrections;

	private final SegmentRun run;

	private final Entries entries;

	private final Whereabouts whereabouts;

	ProtestSubjects(ProtestRepository protests, Corrections corrections, SegmentRun run, Entries entries,
			Whereabouts whereabouts) {
		this.protests = protests;
		this.corrections = corrections;
		this.run = run;
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "protest" -> this.protests.findById(id)
				.map(Protest::view)
				.map((protest) -> name(protest.segment(), protest.claim().entry()));
			case "correction" -> Optional.of(name(this.corrections.correction(new CorrectionView.CorrectionId(id))));
			default -> Optional.empty();
		};
	}

	private SubjectNames.Named name(CorrectionView correction) {
		return name(correction.segment(), this.run.performance(correction.change().performance()).entry());
	}

	private SubjectNames.Named name(SegmentId segment, EntryId entry) {
		return this.whereabouts.of(segment, this.entries.entry(entry).team().name());
	}

}
