package rimebook.rosters;

import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface EventRulesRepository extends JpaRepository<EventRules, UUID> {

}
