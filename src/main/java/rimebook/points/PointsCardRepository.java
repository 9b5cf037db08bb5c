package rimebook.points;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

import rimebook.performances.CardOrigin;

interface PointsCardRepository extends Repository<PointsCard, UUID> {

	void save(PointsCard version);

	Optional<PointsCard> findById(UUID id);

	boolean existsByPerformance(UUID performance);

	/** One seat's cards for a performance, oldest sequence first. */
	List<PointsCard> findByPerformanceAndSeatOrderBySequence(UUID performance, UUID seat);

	/** One seat's cards for these performances, oldest sequence first. */
	List<PointsCard> findBySeatAndPerformanceInOrderBySequence(UUID seat, Collection<UUID> performances);

	/** One seat's cards of that origin. */
	List<PointsCard> findBySeatAndOrigin(UUID seat, CardOrigin origin);

	/** Every version for these performances, oldest sequence first. */
	List<PointsCard> findByPerformanceInOrderBySequence(Collection<UUID> performances);

}
