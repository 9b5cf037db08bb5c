package rimebook.entries;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface PlannedProgrammeRepository extends JpaRepository<PlannedProgramme, UUID> {

	Optional<PlannedProgramme> findByEntryAndSegment(UUID entry, UUID segment);

	List<PlannedProgramme> findByEntryIn(Collection<UUID> entries);

	boolean existsBySegment(UUID segment);

}
