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
	 * Everybody who was born on a day on which one of these people was, in the same order
	 * each time.
	 */
	@Query("""
			select o from Skater o where o.birthDate in (select s.birthDate from Skater s where s.id in :people)
			and o.erasedAt is null and o.mergedInto is null order by o.id""")
	List<Skater> bornOnDaysOf(Collection<UUID> people);

}
