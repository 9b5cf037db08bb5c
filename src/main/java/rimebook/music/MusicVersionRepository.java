package rimebook.music;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface MusicVersionRepository extends JpaRepository<MusicVersion, UUID> {

	List<MusicVersion> findByEntryOrderByNumberDesc(UUID entry);

	List<MusicVersion> findBySegmentInOrderByNumberDesc(Collection<UUID> segments);

	/** The digests of all versions. */
	@Query("select distinct v.digest from MusicVersion v")
	Set<String> digests();

	/** Those of the digests that a version of another segment has. */
	@Query("select distinct v.digest from MusicVersion v where v.digest in :digests and v.segment not in :segments")
	List<String> alsoElsewhere(Collection<String> digests, Collection<UUID> segments);

}
