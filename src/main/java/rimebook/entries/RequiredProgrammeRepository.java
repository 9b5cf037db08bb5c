package rimebook.entries;

import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface RequiredProgrammeRepository extends JpaRepository<RequiredProgramme, UUID> {

}
