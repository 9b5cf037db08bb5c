package rimebook.arrival;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface ArrivalNoteRepository extends JpaRepository<ArrivalNote, UUID> {

	/** All that was noted of these entries, of each place what counts last. */
	List<ArrivalNote> findByEntryInOrderByNumber(Collection<UUID> entries);

}
