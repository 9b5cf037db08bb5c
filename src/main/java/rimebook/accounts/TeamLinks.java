package rimebook.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;

/**
 * The links by which managers come to their own team's page: one for an entry, given to
 * all who manage it. As with other personal links only the digest of a token is kept, and
 * the token itself is shown from the memory of the node that made it, for a day.
 */
@Service
public class TeamLinks {

	private final TeamLinkRepository links;

	private final LinksUnderWay underWay;

	private final LinkArrival arrival;

	private final LinkDoor door;

	private final Acts acts;

	TeamLinks(TeamLinkRepository links, LinksUnderWay underWay, LinkArrival arrival, LinkDoor door, Acts acts) {
		this.links = links;
		this.underWay = underWay;
		this.arrival = arrival;
		this.door = door;
		this.acts = acts;
	}

	/**
	 * Make the link of an entry, or make it anew: the one before is void from now on, and
	 * whoever has it open is shut out. What is on its way to the entry is void, too.
	 * @return the token, which nobody is told again once it is shown no longer
	 */
	@Transactional
	public String give(GiveLink order, Actor actor) {
		String token = this.door.token();
		PersonalLink.Given given = this.door.given(token, order.expiresAt(), actor);
		Optional<TeamLink> before = this.links.findLockedByEntry(order.entry());
		this.underWay.dropAll(order.entry());
		TeamLink link = before
			.orElseGet(() -> new TeamLink(this.acts.nextId(), order.competition(), order.entry(), given));
		AuditedChange line = AuditedChange.of(actor, "entry", order.entry(),
				before.isPresent() ? "entry.manager-link-renewed" : "entry.manager-let-in");
		if (before.isPresent()) {
			link.renew(given);
		}
		else {
			this.links.save(link);
		}
		this.door.show(link, token);
		this.acts.publish(before.isPresent() ? line.from("an earlier link", link.inWords()) : line.to(link.inWords()));
		return token;
	}

	/**
	 * Shut the link of an entry at once, also for whoever has it open. Nothing happens
	 * where it is shut. What is on its way to the entry counts as having arrived, so that
	 * it is shut as well.
	 * @throws NotFoundException if it has none
	 */
	@Transactional
	public void revoke(UUID entry, Actor actor) {
		this.underWay.newest(entry).ifPresent(this.arrival::arrived);
		this.underWay.dropAll(entry);
		TeamLink link = this.links.findLockedByEntry(entry)
			.orElseThrow(() -> NotFoundException.of("personal-link", entry));
		if (link.isRevoked()) {
			return;
		}
		link.revoke(actor, this.door.now());
		this.door.hide(link);
		this.acts
			.publish(AuditedChange.of(actor, "entry", entry, "entry.manager-shut-out").from(link.inWords(), "no link"));
	}

	/** The links of a competition's entries, oldest first. */
	@Transactional(readOnly = true)
	public List<LinkView> of(UUID competition) {
		return this.links.findByCompetitionOrderByIssuedAt(competition)
			.stream()
			.map((link) -> new LinkView(link.pass(), LinkState.of(link, this.door.shown(link), this.acts.now()),
					link.carriedBy()))
			.toList();
	}

	/**
	 * Let in whoever comes with a token for the first time, and note that they came.
	 * @throws LinkRefused saying why they may not
	 */
	@Transactional
	public Pass open(String token) throws LinkRefused {
		LinkUnderWay carried = this.underWay.byToken(SecretTokens.digest(token)).orElse(null);
		if (carried != null) {
			if (!carried.isGood(this.acts.now())) {
				throw new LinkRefused(LinkStanding.EXPIRED);
			}
			// Whoever uses it has it: nobody has to wait for the mail server's answer.
			this.arrival.arrived(carried);
		}
		TeamLink link = this.door.good(this.links, token);
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
	 * @param entry which team's page it opens
	 * @param expiresAt until when it opens anything
	 */
	public record GiveLink(UUID competition, UUID entry, Instant expiresAt) {
	}

	/**
	 * What a good link lets somebody do: everything that is that entry's, nothing else.
	 */
	public record Pass(UUID id, UUID competition, UUID entry, Instant expiresAt) {
	}

	/**
	 * A link as the desk sees it.
	 *
	 * @param carriedBy what brought it to the team; {@code null} where it was given by
	 * hand
	 */
	public record LinkView(Pass pass, LinkState state, @Nullable UUID carriedBy) {
	}

}
