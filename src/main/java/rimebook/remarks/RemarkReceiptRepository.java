package rimebook.remarks;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface RemarkReceiptRepository extends Repository<RemarkReceipt, UUID> {

	void save(RemarkReceipt seen);

	Optional<RemarkReceipt> findByRemarkAndSeat(UUID remark, UUID seat);

	List<RemarkReceipt> findByPerformance(UUID performance);

	/** What one seat has seen; no other seat's is read. */
	List<RemarkReceipt> findByPerformanceAndSeat(UUID performance, UUID seat);

}
