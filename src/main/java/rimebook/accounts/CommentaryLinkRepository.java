package rimebook.accounts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CommentaryLinkRepository extends Repository<CommentaryLink, UUID> {

	void save(CommentaryLink link);

	/** Locks the row, so that of two who change a link at once one comes after. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select l from CommentaryLink l where l.id = :id and l.competition = :competition")
	Optional<CommentaryLink> lock(UUID id, UUID competition);

	Optional<CommentaryLink> findByTokenDigest(String tokenDigest);

	List<CommentaryLink> findByCompetitionOrderByIssuedAt(UUID competition);

	long countByCompetition(UUID competition);

}
