package rimebook.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CodeStopRepository extends Repository<CodeStop, UUID> {

	void save(CodeStop stop);

	/** Forget all but that many of the newest. */
	@Modifying(flushAutomatically = true)
	@Query(nativeQuery = true, value = """
			delete from code_stop where id in
			(select id from code_stop order by stopped_at desc, id desc offset :kept rows)""")
	void forgetBeyond(int kept);

	Optional<CodeStop> findById(UUID id);

	Optional<CodeStop> findFirstByAddressOrderByStoppedAtDesc(String address);

	List<CodeStop> findByStoppedAtAfterOrderByStoppedAtDesc(Instant since);

}
