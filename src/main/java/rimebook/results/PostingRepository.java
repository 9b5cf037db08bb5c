package rimebook.results;

import java.util.List;
import java.util.UUID;

import org.springframework.data.repository.Repository;

interface PostingRepository extends Repository<PostingRow, UUID> {

	void save(PostingRow posting);

	List<PostingRow> findBySegmentOrderByNumber(UUID segment);

}
