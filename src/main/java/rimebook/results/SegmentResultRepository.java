package rimebook.results;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SegmentResultRepository extends Repository<SegmentResult, UUID> {

	void save(SegmentResult result);

	Optional<SegmentResult> findById(UUID segment);

	List<SegmentResult> findBySegmentIn(Collection<UUID> segments);

	/** Whoever publishes for an event queues here, always in the same order of rows. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select r from SegmentResult r where r.segment in :segments order by r.segment")
	List<SegmentResult> findLocked(Collection<UUID> segments);

}
