package rimebook.rosters;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface TeamContactRepository extends JpaRepository<TeamContact, UUID> {

	List<TeamContact> findByEntryInOrderByKindAscNameAsc(Collection<UUID> entries);

}
