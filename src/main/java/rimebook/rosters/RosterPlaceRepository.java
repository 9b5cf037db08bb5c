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

	@Query("select p from RosterPlace p join fetch p.skater where p.mergedFrom = :skater order by p.changedAt")
	List<RosterPlace> findByMergedFrom(UUID skater);

	@Query("select distinct p.entry from RosterPlace p where p.skater.id = :skater or p.mergedFrom = :skater")
	List<UUID> entriesOf(UUID skater);

	/**
	 * People on rosters of these entries of whom something is still known that is to be
	 * forgotten, and who are on no roster but those of entries that are over.
	 */
	@Query("""
			select distinct s.id from RosterPlace p join p.skater s
			where p.entry in :entries and s.erasedAt is null and s.mergedInto is null
			and (s.consent = false or s.birthDate is not null or s.membershipNumber <> '' or s.consentGuardian <> '')
			and not exists (select o.id from RosterPlace o where o.skater = s and o.entry not in :over)""")
	List<UUID> toForget(Collection<UUID> entries, Collection<UUID> over);

	@Query("""
			select coalesce(sum(p.version + s.version + 2 + case when p.mergedFrom is null then 0 else 10000 end), 0)
			from RosterPlace p join p.skater s
			where p.entry in (select e.id from Entry e where e.eventId in :events)""")
	long changes(Collection<UUID> events);

	@Query("""
			select p.entry as whose, count(p.id) as people from RosterPlace p
			where p.entry in :entries and p.role = :role group by p.entry""")
	List<Count> counted(Collection<UUID> entries, PlaceRole role);

	/** How many have such a place on the roster of an entry. */
	interface Count {

		UUID getWhose();

		long getPeople();

	}

}
