package rimebook.protests;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CorrectionRepository extends Repository<Correction, UUID> {

	void save(Correction correction);

	Optional<Correction> findById(UUID id);

	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select c from Correction c where c.id = :id")
	Optional<Correction> findLockedById(UUID id);

	/** The performance of a correction of that line, read without the correction. */
	@Query("select c.performance from Correction c where c.id = :id and c.line = :line")
	Optional<UUID> findPerformanceById(UUID id, String line);

	List<Correction> findBySegmentOrderByProposedAt(UUID segment);

	boolean existsBySegmentAndState(UUID segment, CorrectionState state);

}
