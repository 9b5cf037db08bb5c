package rimebook.entries;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface TeamRepository extends JpaRepository<Team, UUID> {

	List<Team> findByClubOrderByName(Club club);

	/** The teams that went over from the one club to the other. */
	List<Team> findByClubAndMergedFromOrderByName(Club club, UUID mergedFrom);

	Optional<Team> findFirstByClubAndNameIgnoreCaseOrderByName(Club club, String name);

}
