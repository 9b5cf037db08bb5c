package rimebook.accounts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.NoRepositoryBean;
import org.springframework.data.repository.Repository;

@NoRepositoryBean
interface PersonalLinkRepository<L extends PersonalLink> extends Repository<L, UUID> {

	void save(L link);

	/** Locks the row, so that of two who change a link at once one comes after. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select l from #{#entityName} l where l.id = :id and l.competition = :competition")
	Optional<L> lock(UUID id, UUID competition);

	Optional<L> findByTokenDigest(String tokenDigest);

	List<L> findByCompetitionOrderByIssuedAt(UUID competition);

}
