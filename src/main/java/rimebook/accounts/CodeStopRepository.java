package rimebook.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface CodeStopRepository extends Repository<CodeStop, UUID> {

	void save(CodeStop stop);

	Optional<CodeStop> findById(UUID id);

	Optional<CodeStop> findFirstByAddressOrderByStoppedAtDesc(String address);

	List<CodeStop> findByStoppedAtAfterOrderByStoppedAtDesc(Instant since);

}
