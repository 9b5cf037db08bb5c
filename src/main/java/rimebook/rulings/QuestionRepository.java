package rimebook.rulings;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface QuestionRepository extends Repository<Question, UUID> {

	void save(Question question);

	Optional<Question> findById(UUID id);

	/** Whoever rules on a question queues here, so that rulings are numbered in turn. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select q from Question q where q.id = :id")
	Optional<Question> findLockedById(UUID id);

	List<Question> findByCompetitionOrderByAskedAtDesc(UUID competition);

	List<Question> findByEntryOrderByAskedAt(UUID entry);

	List<Question> findBySegmentInOrderByAskedAt(Collection<UUID> segments);

}
