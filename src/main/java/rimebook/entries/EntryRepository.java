package rimebook.entries;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface EntryRepository extends JpaRepository<Entry, UUID> {

	@Query("select e from Entry e join fetch e.team t join fetch t.club where e.eventId in :eventIds")
	List<Entry> findByEventIdIn(Collection<UUID> eventIds);

	@Query("select e from Entry e join fetch e.team t join fetch t.club where t.id = :team order by e.enteredAt")
	List<Entry> findByTeamId(UUID team);

	Optional<Entry> findByEventIdAndTeam(UUID eventId, Team team);

	@Query("""
			select coalesce(sum(e.version + t.version + t.carried + c.version + 1), 0)
			from Entry e join e.team t join t.club c where e.eventId in :events""")
	long changes(Collection<UUID> events);

	/**
	 * The events into which teams of these clubs were entered, withdrawn ones as well.
	 */
	@Query("select distinct e.eventId from Entry e where e.team.club.id in :clubs")
	List<UUID> eventsOf(Collection<UUID> clubs);

	@Query("select e.eventId from Entry e where e.id = :entry")
	Optional<UUID> eventOf(UUID entry);

}
