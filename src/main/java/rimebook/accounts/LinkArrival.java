package rimebook.accounts;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/**
 * Puts a link into force that has arrived: the one before is void from now on, and so is
 * whatever set out earlier. One that somebody made or shut later stays as it is.
 */
@Component
class LinkArrival {

	private final TeamLinkRepository links;

	private final LinksUnderWay underWay;

	private final LinkDoor door;

	private final Acts acts;

	LinkArrival(TeamLinkRepository links, LinksUnderWay underWay, LinkDoor door, Acts acts) {
		this.links = links;
		this.underWay = underWay;
		this.door = door;
		this.acts = acts;
	}

	/** Nothing happens where it is no longer on its way. */
	void arrived(LinkUnderWay arrived) {
		// The link of the entry first, as whoever gives or shuts one does: nobody waits
		// for somebody who waits for them.
		Optional<TeamLink> before = this.links.findLockedByEntry(arrived.order().entry());
		if (!this.underWay.hold(arrived)) {
			return;
		}
		this.underWay.dropUpTo(arrived);
		if (before.isPresent() && before.get().isNewerThan(arrived)) {
			return;
		}
		TeamLink link = before.orElseGet(() -> new TeamLink(this.acts.nextId(), arrived));
		AuditedChange line = AuditedChange
			.of(Actor.system(), "entry", arrived.order().entry(),
					before.isPresent() ? "entry.manager-link-renewed" : "entry.manager-let-in")
			.because("taken along by a letter, sent by " + arrived.issuedBy());
		if (before.isPresent()) {
			this.door.hide(link);
			link.renew(arrived);
		}
		else {
			this.links.save(link);
		}
		this.acts.publish(before.isPresent() ? line.from("an earlier link", link.inWords()) : line.to(link.inWords()));
	}

}
