package rimebook.rosters;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RosterPlaceRepository extends JpaRepository<RosterPlace, UUID> {

	@Query("select p from RosterPlace p join fetch p.skater where p.entry in :entries order by p.number")
	List<RosterPlace> findByEntryIn(Collection<UUID> entries);

	@Query("select p from RosterPlace p join fetch p.skater s where s.id = :skater order by p.changedAt")
	List<RosterPlace> findBySkater(UUID skater);

	@Query("select distinct p.skater.id from RosterPlace p where p.entry in :entries")
	List<UUID> skatersOf(Collection<UUID> entries);

	@Query("select p from RosterPlace p join fetch p.skater s where s.id in :skaters")
	List<RosterPlace> placesOf(Collection<UUID> skaters);

	@Query("""
			select coalesce(sum(p.version + s.version + 2), 0) from RosterPlace p join p.skater s
			where p.entry in (select e.id from Entry e where e.eventId in :events)""")
	long changes(Collection<UUID> events);

}
