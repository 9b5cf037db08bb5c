package rimebook.paper;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface CardKeyingRepository extends Repository<CardKeying, UUID> {

	void save(CardKeying keying);

	boolean existsByPerformance(UUID performance);

	/** Every keying of the cards of a performance, the oldest first. */
	List<CardKeying> findByPerformanceOrderByNumber(UUID performance);

}
