package rimebook.accounts;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Acts;
import rimebook.shared.ConflictException;

/**
 * Links of teams that something carries to them, such as a letter: made when it sets out,
 * in force once it is known to have arrived, and void where it is known not to. While
 * nobody knows, the link before opens the page as it did, and the one on its way takes
 * its place as soon as somebody uses it: so never two of them are in force, and none that
 * arrived is void for want of an answer. Nobody here is shown such a token.
 */
@Service
public class CarriedTeamLinks {

	private final TeamLinkRepository links;

	private final LinksUnderWay underWay;

	private final LinkArrival arrival;

	private final LinkDoor door;

	private final Acts acts;

	CarriedTeamLinks(TeamLinkRepository links, LinksUnderWay underWay, LinkArrival arrival, LinkDoor door, Acts acts) {
		this.links = links;
		this.underWay = underWay;
		this.arrival = arrival;
		this.door = door;
		this.acts = acts;
	}

	/**
	 * Make a link for something that is about to set out. What the same carried before is
	 * void: it is known not to have arrived, or it would not set out again.
	 * @return the token
	 * @throws ConflictException {@code team-link-newer} or {@code team-link-shut} if
	 * somebody gave the team a link, or shut it, after this one was asked for: theirs is
	 * the later word
	 */
	@Transactional
	public String setOut(TeamLinks.GiveLink order, Errand errand) {
		this.links.findLockedByEntry(order.entry()).ifPresent((link) -> link.checkGivesWayTo(errand.askedAt()));
		this.underWay.drop(errand.carriedBy());
		String token = this.door.token();
		this.underWay.add(new LinkUnderWay(this.acts.nextId(), order, errand.carriedBy(), SecretTokens.digest(token),
				errand.by(), this.door.now(), errand.askedAt()));
		return token;
	}

	/** Put what something carried into force. Nothing happens where it is so already. */
	@Transactional
	public void arrived(UUID carriedBy) {
		this.underWay.byCarrier(carriedBy).ifPresent(this.arrival::arrived);
	}

	/** Void what something carried, which did not arrive. */
	@Transactional
	public void lost(UUID carriedBy) {
		this.underWay.drop(carriedBy);
	}

	/** What carries a link to a team of a competition of which nothing was heard yet. */
	@Transactional(readOnly = true)
	public Set<Carrier> of(UUID competition) {
		return this.underWay.of(competition)
			.stream()
			.filter((link) -> link.isGood(this.acts.now()))
			.map((link) -> new Carrier(link.carriedBy(), link.order().entry()))
			.collect(Collectors.toSet());
	}

	/**
	 * That something is to carry a link.
	 *
	 * @param carriedBy what carries it
	 * @param by on whose behalf
	 * @param askedAt when they asked for it
	 */
	public record Errand(UUID carriedBy, String by, Instant askedAt) {
	}

	/**
	 * Something with a link on its way.
	 *
	 * @param entry to whom
	 */
	public record Carrier(UUID carriedBy, UUID entry) {
	}

}
