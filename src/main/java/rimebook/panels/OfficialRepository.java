package rimebook.panels;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface OfficialRepository extends JpaRepository<Official, UUID> {

	List<Official> findAllByOrderByName();

	Optional<Official> findByNameIgnoreCase(String name);

}
