package rimebook.commentary.web;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.accounts.CommentaryLinks;

/** A new link as typed. */
record LinkForm(@Nullable String person, @Nullable Boolean calls) {

	CommentaryLinks.IssueLink order(UUID competition, Instant end) {
		return new CommentaryLinks.IssueLink(competition, (this.person != null) ? this.person : "",
				Boolean.TRUE.equals(this.calls), end);
	}

}
