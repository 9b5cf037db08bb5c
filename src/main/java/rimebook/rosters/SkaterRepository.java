package rimebook.rosters;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface SkaterRepository extends JpaRepository<Skater, UUID> {

	List<Skater> findByErasedAtIsNullAndMergedIntoIsNull();

	List<Skater> findByMergedInto(UUID other);

	List<Skater> findByMergedIntoIn(List<UUID> others);

}
