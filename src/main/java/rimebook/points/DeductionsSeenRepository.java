package rimebook.points;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface DeductionsSeenRepository extends Repository<DeductionsSeen, UUID> {

	void save(DeductionsSeen seen);

	List<DeductionsSeen> findByPerformance(UUID performance);

}
