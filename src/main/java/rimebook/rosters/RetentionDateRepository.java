package rimebook.rosters;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface RetentionDateRepository extends JpaRepository<RetentionDate, UUID> {

	List<RetentionDate> findByDeletedAtIsNullAndDeleteOnLessThanEqual(LocalDate day);

	List<RetentionDate> findByDeletedAtIsNotNull();

}
