package rimebook.accounts;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

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

	private final LinkDoor door;

	private final Acts acts;

	CommentaryLinks(CommentaryLinkRepository links, LinkDoor door, Acts acts) {
		this.links = links;
		this.door = door;
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
		String token = this.door.token();
		CommentaryLink link = new CommentaryLink(this.acts.nextId(), order,
				this.door.given(token, order.expiresAt(), actor));
		this.links.save(link);
		this.door.show(link, token);
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
		CommentaryLink link = this.door.found(this.links, competition, id);
		String token = this.door.token();
		link.renew(this.door.given(token, expiresAt, actor));
		this.door.show(link, token);
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
		CommentaryLink link = this.door.found(this.links, competition, id);
		if (link.isRevoked()) {
			return;
		}
		link.revoke(actor, this.door.now());
		this.door.hide(link);
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
		return this.links.findByCompetitionOrderByIssuedAt(competition).stream().map(this::view).toList();
	}

	private LinkView view(CommentaryLink link) {
		return new LinkView(link.pass(), LinkState.of(link, this.door.shown(link), this.acts.now()));
	}

	/**
	 * Let in whoever comes with a token for the first time, and note that they came.
	 * @throws LinkRefused saying why they may not
	 */
	@Transactional
	public Pass open(String token) throws LinkRefused {
		CommentaryLink link = this.door.good(this.links, token);
		link.open(this.door.now());
		return link.pass();
	}

	/**
	 * Whose token that is.
	 * @throws LinkRefused saying why it opens nothing
	 */
	@Transactional(readOnly = true)
	public Pass pass(String token) throws LinkRefused {
		return this.door.good(this.links, token).pass();
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
	 */
	public record LinkView(Pass pass, LinkState state) {
	}

}
