package rimebook.marks;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface RemarkRepository extends Repository<Remark, UUID> {

	void save(Remark remark);

	List<Remark> findByPerformanceOrderByNotedAt(UUID performance);

}
