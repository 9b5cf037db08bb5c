package rimebook.panels;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface SeatRepository extends JpaRepository<Seat, UUID> {

	@Query("select s from Seat s left join fetch s.official where s.eventId = :eventId")
	List<Seat> findByEventId(UUID eventId);

	/** The events in whose panels somebody sits. */
	@Query("select distinct s.eventId from Seat s where s.official is not null")
	Set<UUID> taken();

	Optional<Seat> findByEventIdAndKindAndNumber(UUID eventId, SeatKind kind, int number);

	/** To which event a seat belongs, without reading the seat itself. */
	@Query("select s.eventId from Seat s where s.id = :id")
	Optional<UUID> eventOf(UUID id);

}
