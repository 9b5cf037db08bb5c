package rimebook.points;

import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface ListAuthorisationRepository extends Repository<ListAuthorisation, UUID> {

	void save(ListAuthorisation authorisation);

	Optional<ListAuthorisation> findByPerformanceAndSequence(UUID performance, int sequence);

}
