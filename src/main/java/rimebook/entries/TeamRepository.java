package rimebook.entries;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface TeamRepository extends JpaRepository<Team, UUID> {

	List<Team> findByClubOrderByName(Club club);

	Optional<Team> findFirstByClubAndNameIgnoreCaseOrderByName(Club club, String name);

}
