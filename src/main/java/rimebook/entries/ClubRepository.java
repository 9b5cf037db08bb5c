package rimebook.entries;

import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface ClubRepository extends JpaRepository<Club, UUID> {

	Optional<Club> findFirstByNameIgnoreCaseOrderByName(String name);

}
