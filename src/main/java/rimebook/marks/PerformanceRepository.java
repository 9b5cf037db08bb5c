package rimebook.marks;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PerformanceRepository extends Repository<Performance, UUID> {

	void save(Performance performance);

	Optional<Performance> findById(UUID id);

	/**
	 * Whoever sends, closes or corrects a card queues here, so none of them can cross.
	 */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select p from Performance p where p.id = :id")
	Optional<Performance> findLockedById(UUID id);

	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select p from Performance p where p.segment = :segment order by p.startNumber")
	List<Performance> findLockedBySegment(UUID segment);

	/** The segment of a performance, read without the performance itself. */
	@Query("select p.segment from Performance p where p.id = :id")
	Optional<UUID> findSegmentById(UUID id);

	List<Performance> findBySegmentOrderByStartNumber(UUID segment);

	List<Performance> findByEntry(UUID entry);

	boolean existsBySegment(UUID segment);

}
