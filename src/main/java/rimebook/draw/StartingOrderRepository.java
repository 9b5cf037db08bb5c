package rimebook.draw;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface StartingOrderRepository extends JpaRepository<StartingOrder, UUID> {

	Optional<StartingOrder> findFirstBySegmentIdOrderByNumberDesc(UUID segmentId);

	List<StartingOrder> findBySegmentIdOrderByNumberDesc(UUID segmentId);

	int countBySegmentIdIn(Collection<UUID> segmentIds);

	boolean existsBySegmentId(UUID segmentId);

}
