package rimebook.fees;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.shared.SubjectNames;

/** Bookings by the club, rules by the competition. */
@Component
@Transactional(readOnly = true)
class FeeSubjects implements SubjectNames {

	private final LedgerRowRepository rows;

	private final Entries entries;

	private final Competitions competitions;

	FeeSubjects(LedgerRowRepository rows, Entries entries, Competitions competitions) {
		this.rows = rows;
		this.entries = entries;
		this.competitions = competitions;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "fee" -> this.rows.findById(id).map((row) -> booking(row.whose()));
			case "fee-rules" -> Optional.of(in(new CompetitionId(id), ""));
			default -> Optional.empty();
		};
	}

	private SubjectNames.Named booking(LedgerRow.Whose whose) {
		String club = this.entries.clubs()
			.stream()
			.filter((known) -> known.id().equals(whose.club()))
			.findFirst()
			.map(ClubView::name)
			.orElse("");
		return in(whose.competition(), club.isEmpty() ? "" : club + ", ");
	}

	private SubjectNames.Named in(CompetitionId id, String what) {
		CompetitionView competition = this.competitions.competition(id);
		return new SubjectNames.Named(what + competition.name(), competition.zone());
	}

}
