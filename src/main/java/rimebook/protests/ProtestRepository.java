package rimebook.protests;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface ProtestRepository extends Repository<Protest, UUID> {

	void save(Protest protest);

	Optional<Protest> findById(UUID id);

	List<Protest> findBySegmentOrderByFiledAt(UUID segment);

	boolean existsBySegmentAndState(UUID segment, ProtestState state);

}
