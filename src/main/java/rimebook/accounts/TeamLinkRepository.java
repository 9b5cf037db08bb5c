package rimebook.accounts;

import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;

interface TeamLinkRepository extends PersonalLinkRepository<TeamLink> {

	/** Locks the row, so that of two who make a link at once one comes after. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	Optional<TeamLink> findLockedByEntry(UUID entry);

}
