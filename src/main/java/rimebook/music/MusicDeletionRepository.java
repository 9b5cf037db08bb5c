package rimebook.music;

import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface MusicDeletionRepository extends JpaRepository<MusicDeletion, UUID> {

}
