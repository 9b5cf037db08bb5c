package rimebook.arrival;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface LineupRepository extends JpaRepository<Lineup, UUID> {

	/** All that was kept of an entry, of each segment what counts last. */
	List<Lineup> findByEntryOrderByNumber(UUID entry);

}
