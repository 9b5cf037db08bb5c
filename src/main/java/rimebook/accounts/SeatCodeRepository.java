package rimebook.accounts;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SeatCodeRepository extends Repository<SeatCode, UUID> {

	SeatCode save(SeatCode code);

	Optional<SeatCode> findById(UUID seat);

	List<SeatCode> findBySeatIdIn(Collection<UUID> seats);

	boolean existsByCodeDigest(String digest);

	/** Locks the row, so that of two tablets joining at once one is the newer. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	Optional<SeatCode> findByCodeDigest(String digest);

	/** Locks the row, as {@link #findByCodeDigest}. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	Optional<SeatCode> findByAskedDigest(String digest);

	/** Locks the row, as {@link #findByCodeDigest}. */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	Optional<SeatCode> findBySeatId(UUID seat);

	/** The seats that a tablet asks for since a time, the oldest question first. */
	List<SeatCode> findByAskedRefusedFalseAndAskedAtAfterOrderByAskedAt(Instant since);

	Optional<SeatCode> findByDeviceDigest(String digest);

	/** Without the optimistic lock: hearing of a tablet is no change of its seat. */
	@Modifying
	@Query("update SeatCode c set c.lastHeardAt = :now where c.seatId = :seat and c.lastHeardAt < :before")
	int heard(UUID seat, Instant now, Instant before);

	/** Without the optimistic lock, as {@link #heard}. */
	@Modifying
	@Query("update SeatCode c set c.waiting = :waiting, c.faulty = :faulty where c.seatId = :seat")
	int told(UUID seat, int waiting, boolean faulty);

}
