package rimebook.timetable;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface TimetableVersionRepository extends JpaRepository<TimetableVersionRow, UUID> {

	Optional<TimetableVersionRow> findFirstByCompetitionOrderByNumberDesc(UUID competition);

	Optional<TimetableVersionRow> findByCompetitionAndNumber(UUID competition, int number);

	List<TimetableVersionRow> findByCompetitionOrderByNumberDesc(UUID competition);

	int countByCompetition(UUID competition);

}
