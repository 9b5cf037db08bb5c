package rimebook.protests;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ProtestRepository extends Repository<Protest, UUID> {

	void save(Protest protest);

	Optional<Protest> findById(UUID id);

	List<Protest> findBySegmentOrderByFiledAt(UUID segment);

	boolean existsBySegmentAndStateIn(UUID segment, Collection<ProtestView.State> states);

	int countBySegmentAndStateIn(UUID segment, Collection<ProtestView.State> states);

	@Query("select count(p) + coalesce(sum(p.version), 0) from Protest p where p.segment in :segments")
	long changes(Collection<UUID> segments);

}
