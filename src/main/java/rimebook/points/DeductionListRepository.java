package rimebook.points;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface DeductionListRepository extends Repository<DeductionList, UUID> {

	void save(DeductionList version);

	boolean existsByPerformance(UUID performance);

	/** Every version for these performances, oldest sequence first. */
	List<DeductionList> findByPerformanceInOrderBySequence(Collection<UUID> performances);

}
