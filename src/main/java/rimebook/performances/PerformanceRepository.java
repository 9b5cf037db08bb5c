package rimebook.performances;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PerformanceRepository extends Repository<Performance, UUID> {

	void save(Performance performance);

	void delete(Performance performance);

	void flush();

	Optional<Performance> findById(UUID id);

	/**
	 * Whoever sends, closes or corrects a card queues here, so none of them can cross.
	 */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select p from Performance p where p.id = :id")
	Optional<Performance> findLockedById(UUID id);

	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select p from Performance p where p.segment = :segment and p.status <> 'SET_ASIDE' order by p.startNumber")
	List<Performance> findLockedBySegment(UUID segment);

	/** The segment of a performance, read without the performance itself. */
	@Query("select p.segment from Performance p where p.id = :id")
	Optional<UUID> findSegmentById(UUID id);

	/** Those that count, or will: what is set aside is not among them. */
	@Query("select p from Performance p where p.segment = :segment and p.status <> 'SET_ASIDE' order by p.startNumber")
	List<Performance> findBySegmentOrderByStartNumber(UUID segment);

	/** The skates that do not count, each with the one that is skated instead. */
	@Query("select p from Performance p where p.segment = :segment and p.status = 'SET_ASIDE' and exists "
			+ "(select a from Performance a where a.againFor = p.id) order by p.startNumber, p.skate")
	List<Performance> findSetAside(UUID segment);

	/** Only the identities, since every tablet asks all the time. */
	@Query("select p.id from Performance p where p.segment = :segment and p.status = 'SET_ASIDE' order by p.startNumber")
	List<UUID> findIdsSetAside(UUID segment);

	/** How many performances of a team there are in a segment, set aside or not. */
	int countBySegmentAndEntry(UUID segment, UUID entry);

	/** Those of a team that count, or will, in all segments. */
	@Query("select p from Performance p where p.entry = :entry and p.status <> 'SET_ASIDE'")
	List<Performance> findByEntry(UUID entry);

	boolean existsBySegment(UUID segment);

	/** Tell whether a team of the segment was called, set aside or not. */
	boolean existsBySegmentAndCalledAtNotNull(UUID segment);

}
