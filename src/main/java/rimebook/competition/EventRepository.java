package rimebook.competition;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EventRepository extends JpaRepository<Event, UUID> {

	@Query("""
			select e from Event e left join fetch e.segments
			where e.competitionId = :competitionId order by e.position""")
	List<Event> findByCompetitionIdOrderByPosition(UUID competitionId);

	@Query("""
			select e from Event e left join fetch e.segments
			where e.competitionId in :competitionIds order by e.position""")
	List<Event> findByCompetitionIdInOrderByPosition(Collection<UUID> competitionIds);

	Optional<Event> findByCompetitionIdAndSlug(UUID competitionId, String slug);

	boolean existsByCompetitionId(UUID competitionId);

	@Query("select e.competitionId from Event e where e.id = :event")
	Optional<UUID> competitionOf(UUID event);

	@Query("select s.event.id from Segment s where s.id = :segment")
	Optional<UUID> eventOf(UUID segment);

	@Query("""
			select new rimebook.competition.Openness(c.state, e.name, e.cancelled, s.name, s.cancelled)
			from Segment s join s.event e join Competition c on c.id = e.competitionId where s.id = :segment""")
	Optional<Openness> openness(UUID segment);

	@Query("""
			select new rimebook.competition.Openness(c.state, e.name, e.cancelled, '', '')
			from Event e join Competition c on c.id = e.competitionId where e.id = :event""")
	Optional<Openness> opennessOfEvent(UUID event);

	@Query("select s.event from Segment s where s.id = :segment")
	Optional<Event> findBySegment(UUID segment);

}
