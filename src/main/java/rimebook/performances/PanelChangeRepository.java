package rimebook.performances;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface PanelChangeRepository extends Repository<PanelChange, UUID> {

	void save(PanelChange change);

	List<PanelChange> findBySegmentOrderBySequence(UUID segment);

}
