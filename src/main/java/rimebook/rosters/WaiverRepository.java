package rimebook.rosters;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface WaiverRepository extends JpaRepository<Waiver, UUID> {

	List<Waiver> findByEntryInOrderByGivenAt(Collection<UUID> entries);

}
