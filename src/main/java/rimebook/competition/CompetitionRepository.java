package rimebook.competition;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface CompetitionRepository extends JpaRepository<Competition, UUID> {

	List<Competition> findAllByOrderByFirstDayDescNameAsc();

	/** The newest, since identities are in the order of time. */
	List<Competition> findByStateInOrderByIdDesc(Collection<CompetitionState> states, Limit most);

	Optional<Competition> findBySlug(String slug);

	boolean existsBySlug(String slug);

	/**
	 * Read the competition and keep others from changing it until the transaction ends.
	 */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select c from Competition c where c.id = :id")
	Optional<Competition> holdById(UUID id);

}
