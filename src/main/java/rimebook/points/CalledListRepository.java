package rimebook.points;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface CalledListRepository extends Repository<CalledList, UUID> {

	void save(CalledList version);

	boolean existsByPerformance(UUID performance);

	/** Every version for these performances, oldest sequence first. */
	List<CalledList> findByPerformanceInOrderBySequence(Collection<UUID> performances);

}
