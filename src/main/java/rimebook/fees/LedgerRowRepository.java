package rimebook.fees;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface LedgerRowRepository extends JpaRepository<LedgerRow, UUID> {

	/** All rows of all clubs, each club's in the order in which they were written. */
	List<LedgerRow> findByCompetitionOrderByNumber(UUID competition);

	boolean existsByCompetition(UUID competition);

	boolean existsByReverses(UUID row);

}
