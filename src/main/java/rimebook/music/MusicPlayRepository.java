package rimebook.music;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface MusicPlayRepository extends JpaRepository<MusicPlay, UUID> {

	List<MusicPlay> findBySegmentOrderByStartedAt(UUID segment);

	/** Those of the segments in which something was played. */
	@Query("select distinct p.segment from MusicPlay p where p.segment in :segments")
	List<UUID> played(Collection<UUID> segments);

}
