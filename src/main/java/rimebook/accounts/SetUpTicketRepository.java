package rimebook.accounts;

import java.util.Optional;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SetUpTicketRepository extends Repository<SetUpTicket, Integer> {

	SetUpTicket save(SetUpTicket ticket);

	Optional<SetUpTicket> findById(int id);

	/** Locks the row, so that of two who open the link at once one makes the account. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select t from SetUpTicket t where t.id = :id")
	Optional<SetUpTicket> lock(int id);

}
