package rimebook.rosters;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface SkaterRepository extends JpaRepository<Skater, UUID> {

	List<Skater> findByErasedAtIsNullAndMergedIntoIsNull();

	List<Skater> findByMergedInto(UUID other);

	List<Skater> findByMergedIntoIn(List<UUID> others);

	/**
	 * Each of these people with each other person who was born on the same day, in the
	 * same order each time.
	 */
	@Query("""
			select s, o from Skater s, Skater o where s.id in :people and o.birthDate = s.birthDate and o.id <> s.id
			and s.erasedAt is null and s.mergedInto is null and o.erasedAt is null and o.mergedInto is null
			order by s.id, o.id""")
	List<Object[]> bornOnOneDay(Collection<UUID> people);

}
