package rimebook.rulings;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface RulingRepository extends Repository<Ruling, UUID> {

	void save(Ruling ruling);

	/** The rulings on these questions, the newest first. */
	List<Ruling> findByQuestionInOrderByNumberDesc(Collection<UUID> questions);

}
