package rimebook.placement;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

import rimebook.performances.CardOrigin;

interface CardSubmissionRepository extends Repository<CardSubmission, UUID> {

	void save(CardSubmission submission);

	Optional<CardSubmission> findById(UUID id);

	boolean existsByPerformance(UUID performance);

	/** One seat's cards of that origin. */
	List<CardSubmission> findBySeatAndOrigin(UUID seat, CardOrigin origin);

	/** Every version of the cards of these performances, oldest sequence first. */
	List<CardSubmission> findByPerformanceInOrderBySequence(Collection<UUID> performances);

	/** One seat's cards of these performances, oldest sequence first. */
	List<CardSubmission> findBySeatAndPerformanceInOrderBySequence(UUID seat, Collection<UUID> performances);

}
