package rimebook.timetable;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface PlanRowRepository extends JpaRepository<PlanRow, UUID> {

	Optional<PlanRow> findFirstByCompetitionOrderByNumberDesc(UUID competition);

	Optional<PlanRow> findByCompetitionAndNumber(UUID competition, int number);

	List<PlanRow> findByCompetitionAndNumberGreaterThanOrderByNumber(UUID competition, int number);

}
