package rimebook.music;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface MusicDeadlineRepository extends JpaRepository<MusicDeadline, UUID> {

	/** The one that counts. */
	Optional<MusicDeadline> findFirstByCompetitionOrderByNumberDesc(UUID competition);

	List<MusicDeadline> findByCompetitionInOrderByNumberDesc(Collection<UUID> competitions);

}
