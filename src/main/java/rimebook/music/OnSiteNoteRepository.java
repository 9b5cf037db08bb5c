package rimebook.music;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface OnSiteNoteRepository extends JpaRepository<OnSiteNote, UUID> {

	/** The one that counts. */
	Optional<OnSiteNote> findFirstByEntryAndSegmentOrderByNumberDesc(UUID entry, UUID segment);

	List<OnSiteNote> findByEntryOrderByNumberDesc(UUID entry);

	List<OnSiteNote> findBySegmentInOrderByNumberDesc(Collection<UUID> segments);

}
