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

	/** What a correction changes, read without the correction. */
	@Query("select c.amendment from Correction c where c.id = :id")
	Optional<String> findAmendmentById(UUID id);

	/** The performance of a correction, read without the correction. */
	@Query("select c.performance from Correction c where c.id = :id")
	UUID findPerformanceById(UUID id);

	List<Correction> findBySegmentOrderByProposedAt(UUID segment);

	boolean existsBySegmentAndState(UUID segment, CorrectionView.State state);

}
