package rimebook.competition;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EventRepository extends JpaRepository<Event, UUID> {

	@EntityGraph(attributePaths = "segments")
	List<Event> findByCompetitionIdOrderByPosition(UUID competitionId);

	Optional<Event> findByCompetitionIdAndSlug(UUID competitionId, String slug);

	boolean existsByCompetitionId(UUID competitionId);

	@Query("select e.competitionId from Event e where e.id = :event")
	Optional<UUID> competitionOf(UUID event);

	@Query("select s.event from Segment s where s.id = :segment")
	Optional<Event> findBySegment(UUID segment);

}
