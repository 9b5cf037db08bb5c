package rimebook.accounts;

import java.util.UUID;

interface CommentaryLinkRepository extends PersonalLinkRepository<CommentaryLink> {

	long countByCompetition(UUID competition);

}
