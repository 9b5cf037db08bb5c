package rimebook.fees;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface FeeTermsRepository extends JpaRepository<FeeTerms, UUID> {

	/** All that were ever set, the newest last. */
	List<FeeTerms> findByCompetitionOrderByNumber(UUID competition);

	boolean existsByEvent(UUID event);

}
