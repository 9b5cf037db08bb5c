package rimebook.performances;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface RemarkSeenRepository extends Repository<RemarkSeen, UUID> {

	void save(RemarkSeen seen);

	Optional<RemarkSeen> findByRemarkAndSeat(UUID remark, UUID seat);

	List<RemarkSeen> findByPerformance(UUID performance);

	/** What one seat has seen; no other seat's is read. */
	List<RemarkSeen> findByPerformanceAndSeat(UUID performance, UUID seat);

}
