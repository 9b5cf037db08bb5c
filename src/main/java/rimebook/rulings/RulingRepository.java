package rimebook.rulings;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RulingRepository extends Repository<Ruling, UUID> {

	void save(Ruling ruling);

	/** The rulings on these questions, the newest first. */
	List<Ruling> findByQuestionInOrderByNumberDesc(Collection<UUID> questions);

	@Query("select count(r) from Ruling r where r.question in (select q.id from Question q where q.competition = :competition)")
	int countOf(UUID competition);

}
