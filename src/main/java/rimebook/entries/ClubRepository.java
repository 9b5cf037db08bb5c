package rimebook.entries;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface ClubRepository extends JpaRepository<Club, UUID> {

	Optional<Club> findFirstByNameIgnoreCaseOrderByName(String name);

	/** The clubs that turned out to be that one. */
	List<Club> findByMergedInto(UUID mergedInto);

	/** The clubs that are one of their own. */
	List<Club> findByMergedIntoIsNull();

}
