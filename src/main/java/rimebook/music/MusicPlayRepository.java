package rimebook.music;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface MusicPlayRepository extends JpaRepository<MusicPlay, UUID> {

	List<MusicPlay> findBySegmentOrderByStartedAt(UUID segment);

}
