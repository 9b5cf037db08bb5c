package rimebook.accounts;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * The way in while there is no administrator yet: a link with a token of 32 random bytes
 * that makes one account, once. Only the token's digest is kept; each start makes a new
 * link until one is used; each is good for a day.
 */
@Service
public class SetUpLink {

	private final SetUpTicketRepository tickets;

	private final PersonRepository people;

	private final People accounts;

	private final SecretTokens tokens;

	private final Clock clock;

	SetUpLink(SetUpTicketRepository tickets, PersonRepository people, People accounts, SecretTokens tokens,
			Clock clock) {
		this.tickets = tickets;
		this.people = people;
		this.accounts = accounts;
		this.tokens = tokens;
		this.clock = clock;
	}

	/**
	 * Make a new link and void the one before it, unless there is an administrator.
	 * @return the token, or nothing if there is an administrator
	 */
	@Transactional
	Optional<String> renew() {
		if (this.people.existsActive(Role.ADMINISTRATOR)) {
			return Optional.empty();
		}
		String token = this.tokens.token();
		String digest = SecretTokens.digest(token);
		Instant now = this.clock.instant();
		this.tickets.lock(SetUpTicket.ONLY)
			.ifPresentOrElse((ticket) -> ticket.replace(digest, now),
					() -> this.tickets.save(new SetUpTicket(digest, now)));
		return Optional.of(token);
	}

	/**
	 * Do nothing if the link is good.
	 * @throws NotFoundException {@code set-up-link-unknown}
	 * @throws ConflictException {@code set-up-link-used} or {@code set-up-link-expired}
	 */
	@Transactional(readOnly = true)
	public void check(String token) {
		ticket(this.tickets.findById(SetUpTicket.ONLY), token).refuseUnlessGood(this.clock.instant());
	}

	/**
	 * Make the first administrator. Whatever roles the draft names, the account gets this
	 * one; it can give itself more.
	 * @param token the last part of the link
	 * @param first who it is
	 * @param device where the link was opened
	 * @throws NotFoundException {@code set-up-link-unknown}
	 * @throws ConflictException {@code set-up-link-used} or {@code set-up-link-expired}
	 */
	@Transactional
	public PersonView redeem(String token, DraftPerson first, String device) {
		ticket(this.tickets.lock(SetUpTicket.ONLY), token).use(this.clock.instant());
		DraftPerson administrator = new DraftPerson(first.signInName(), first.displayName(), Set.of(Role.ADMINISTRATOR),
				first.password());
		Actor self = new Actor(administrator.displayName(), Role.ADMINISTRATOR.word(), device);
		return this.accounts.add(administrator, self);
	}

	private SetUpTicket ticket(Optional<SetUpTicket> kept, String token) {
		return kept.filter((ticket) -> ticket.isFor(SecretTokens.digest(token)))
			.orElseThrow(
					() -> new NotFoundException("set-up-link-unknown", Sentence.of("accounts.set-up-link-unknown")));
	}

}
