package rimebook.panels;

import java.util.Collection;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface InterestRepository extends JpaRepository<Interest, UUID> {

	boolean existsByOfficialIdAndKindAndTeam(UUID officialId, InterestView.Kind kind, String team);

	List<Interest> findByOfficialIdInOrderByTeamAscKindAsc(Collection<UUID> officialIds);

	List<Interest> findByOfficialIdOrderByTeamAscKindAsc(UUID officialId);

}
