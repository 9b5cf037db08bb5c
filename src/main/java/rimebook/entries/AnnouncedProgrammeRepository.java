package rimebook.entries;

import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface AnnouncedProgrammeRepository extends JpaRepository<AnnouncedProgramme, UUID> {

	Optional<AnnouncedProgramme> findByEntryAndSegment(UUID entry, UUID segment);

	boolean existsBySegment(UUID segment);

}
