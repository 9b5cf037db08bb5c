package rimebook.entries;

import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface ClubContactRepository extends JpaRepository<ClubContact, UUID> {

}
