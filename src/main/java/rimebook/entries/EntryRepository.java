package rimebook.entries;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EntryRepository extends JpaRepository<Entry, UUID> {

	@EntityGraph(attributePaths = { "team", "team.club" })
	List<Entry> findByEventIdIn(Collection<UUID> eventIds);

	Optional<Entry> findByEventIdAndTeam(UUID eventId, Team team);

	@Query("select e.eventId from Entry e where e.id = :entry")
	Optional<UUID> eventOf(UUID entry);

}
