package rimebook.results;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface ResultVersionRepository extends Repository<ResultVersionRow, UUID> {

	void save(ResultVersionRow row);

	Optional<ResultVersionRow> findFirstByScopeIdOrderByNumberDesc(UUID scopeId);

	Optional<ResultVersionRow> findFirstByScopeIdAndPublishedAtLessThanEqualOrderByNumberDesc(UUID scopeId,
			Instant moment);

	Optional<ResultVersionRow> findFirstByScopeIdAndCauseOrderByNumberDesc(UUID scopeId, ResultVersion.Cause cause);

	Optional<ResultVersionRow> findByScopeIdAndNumber(UUID scopeId, int number);

	List<ResultVersionRow> findByScopeIdOrderByNumberDesc(UUID scopeId);

	List<ResultVersionRow> findByScopeIdAndCauseAndNumberLessThanEqualOrderByNumber(UUID scopeId,
			ResultVersion.Cause cause, int number);

}
