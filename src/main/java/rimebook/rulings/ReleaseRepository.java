package rimebook.rulings;

import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface ReleaseRepository extends Repository<Release, UUID> {

	void save(Release release);

	/** The one that counts. */
	Optional<Release> findFirstByQuestionOrderByNumberDesc(UUID question);

}
