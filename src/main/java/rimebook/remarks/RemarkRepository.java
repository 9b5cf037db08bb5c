package rimebook.remarks;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface RemarkRepository extends Repository<Remark, UUID> {

	void save(Remark remark);

	Optional<Remark> findById(UUID id);

	List<Remark> findByPerformanceOrderByNotedAt(UUID performance);

}
