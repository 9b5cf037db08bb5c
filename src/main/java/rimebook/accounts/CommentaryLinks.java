package rimebook.accounts;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Personal links of people who talk while teams skate. A link holds a token of 32 random
 * bytes, of which only the digest is kept; it opens one page of one competition without a
 * password until it expires or is revoked. Like a seat's code it is shown from the memory
 * of the node that made it, for a day.
 */
@Service
public class CommentaryLinks {

	/** More would be a list of everybody, which needs no links. */
	static final int MOST = 100;

	private final CommentaryLinkRepository links;

	private final SecretTokens tokens;

	private final ShownCodes shown;

	private final Acts acts;

	CommentaryLinks(CommentaryLinkRepository links, SecretTokens tokens, ShownCodes shown, Acts acts) {
		this.links = links;
		this.tokens = tokens;
		this.shown = shown;
		this.acts = acts;
	}

	/**
	 * Make a link for somebody.
	 * @return the token, which nobody is told again once it is shown no longer
	 * @throws ConflictException {@code too-many-links}
	 */
	@Transactional
	public String issue(IssueLink order, Actor actor) {
		if (this.links.countByCompetition(order.competition()) >= MOST) {
			throw new ConflictException("too-many-links", "person", Sentence.of("accounts.too-many-links", MOST));
		}
		String token = this.tokens.token();
		CommentaryLink link = new CommentaryLink(this.acts.nextId(), order, SecretTokens.digest(token), actor, now());
		this.links.save(link);
		this.shown.show(link.id(), token, link.issuedAt());
		this.acts.publish(AuditedChange.of(actor, "competition", link.competition(), "competition.commentator-let-in")
			.to(link.inWords()));
		return token;
	}

	/**
	 * Make the link of the same person anew, for one that was lost, or revoked by
	 * mistake. The one before is void from now on.
	 * @param expiresAt until when the new one opens anything
	 * @return the token
	 * @throws NotFoundException if the competition has no such link
	 */
	@Transactional
	public String renew(UUID competition, UUID id, Instant expiresAt, Actor actor) {
		CommentaryLink link = found(competition, id);
		String token = this.tokens.token();
		link.renew(SecretTokens.digest(token), expiresAt, actor, now());
		this.shown.show(link.id(), token, link.issuedAt());
		this.acts.publish(AuditedChange.of(actor, "competition", competition, "competition.commentator-link-renewed")
			.from("an earlier link for " + link.person(), link.inWords()));
		return token;
	}

	/**
	 * Shut a link at once, also for whoever has it open. Nothing happens where it is
	 * shut.
	 * @throws NotFoundException if the competition has no such link
	 */
	@Transactional
	public void revoke(UUID competition, UUID id, Actor actor) {
		CommentaryLink link = found(competition, id);
		if (link.isRevoked()) {
			return;
		}
		link.revoke(actor, now());
		this.shown.hide(id);
		this.acts.publish(AuditedChange.of(actor, "competition", competition, "competition.commentator-shut-out")
			.from(link.inWords(), "no link for " + link.person()));
	}

	/** Tell whether a link that ends then would open anything now. */
	public boolean isToCome(Instant end) {
		return this.acts.now().isBefore(end);
	}

	/** The links of a competition, oldest first. */
	@Transactional(readOnly = true)
	public List<LinkView> of(UUID competition) {
		return this.links.findByCompetitionOrderByIssuedAt(competition)
			.stream()
			.map((link) -> link.view(this.shown.find(link.id(), link.issuedAt()).orElse(null), this.acts.now()))
			.toList();
	}

	/**
	 * Let in whoever comes with a token for the first time, and note that they came.
	 * @throws LinkRefused saying why they may not
	 */
	@Transactional
	public Pass open(String token) throws LinkRefused {
		CommentaryLink link = good(token);
		link.open(now());
		return link.pass();
	}

	/**
	 * Whose token that is.
	 * @throws LinkRefused saying why it opens nothing
	 */
	@Transactional(readOnly = true)
	public Pass pass(String token) throws LinkRefused {
		return good(token).pass();
	}

	private CommentaryLink good(String token) throws LinkRefused {
		CommentaryLink link = this.links.findByTokenDigest(SecretTokens.digest(token))
			.orElseThrow(() -> new LinkRefused(Standing.UNKNOWN));
		Standing standing = link.standing(this.acts.now());
		if (standing != Standing.GOOD) {
			throw new LinkRefused(standing);
		}
		return link;
	}

	private CommentaryLink found(UUID competition, UUID id) {
		return this.links.lock(id, competition).orElseThrow(() -> NotFoundException.of("commentary-link", id));
	}

	private Instant now() {
		return this.acts.now().truncatedTo(ChronoUnit.MILLIS);
	}

	/** How a link stands. */
	public enum Standing {

		/** It opens the page. */
		GOOD,

		/** Nobody was ever given it, or a newer one took its place. */
		UNKNOWN,

		/** Somebody at the desk shut it. */
		REVOKED,

		/** The competition is over. */
		EXPIRED

	}

	/** A token opens nothing. Expected every day, so it is checked and has no trace. */
	public static final class LinkRefused extends Exception {

		private static final long serialVersionUID = 1L;

		private final Standing standing;

		LinkRefused(Standing standing) {
			super(standing.name(), null, false, false);
			this.standing = standing;
		}

		/** Why. */
		public Standing standing() {
			return this.standing;
		}

	}

	/**
	 * The order to make a link.
	 *
	 * @param competition whose page it opens
	 * @param person for whom it is, up to 120 characters
	 * @param calls whether the elements may be told while they are called
	 * @param expiresAt until when it opens anything
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record IssueLink(UUID competition, String person, boolean calls, Instant expiresAt) {

		public IssueLink {
			person = Name.required("person", person);
		}

	}

	/**
	 * What a good link lets somebody do.
	 *
	 * @param calls whether the elements may be told while they are called
	 */
	public record Pass(UUID id, UUID competition, String person, boolean calls, Instant expiresAt) {
	}

	/**
	 * A link as the desk sees it.
	 *
	 * @param token what it holds, {@code null} where it is shown no longer
	 * @param revokedBy who shut it, empty where nobody did
	 * @param openedAt when it was opened first, {@code null} where it was not
	 */
	public record LinkView(Pass pass, Standing standing, @Nullable String token, String issuedBy, Instant issuedAt,
			String revokedBy, @Nullable Instant openedAt) {
	}

}
