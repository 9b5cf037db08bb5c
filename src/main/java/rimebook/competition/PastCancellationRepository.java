package rimebook.competition;

import java.time.Instant;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface PastCancellationRepository extends JpaRepository<PastCancellation, UUID> {

	/**
	 * Tell whether one that was brought back since was cancelled at a moment. What is
	 * published in the act that cancels is without it, in the act that brings back, with
	 * it.
	 */
	@Query("""
			select count(c) > 0 from PastCancellation c
			where c.subjectId = :subject and c.cancelledAt <= :moment and c.broughtBackAt > :moment""")
	boolean wasCancelled(UUID subject, Instant moment);

}
