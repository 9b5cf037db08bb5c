package rimebook.clock;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface ClockTapRepository extends Repository<ClockTap, UUID> {

	void save(ClockTap tap);

	List<ClockTap> findByPerformanceOrderBySequence(UUID performance);

}
