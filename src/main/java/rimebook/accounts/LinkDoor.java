package rimebook.accounts;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.NotFoundException;

/**
 * Makes the tokens of personal links, shows them for a day on the node that made them,
 * and tells whether one opens anything.
 */
@Component
class LinkDoor {

	private final SecretTokens tokens;

	private final ShownCodes shown;

	private final Acts acts;

	LinkDoor(SecretTokens tokens, ShownCodes shown, Acts acts) {
		this.tokens = tokens;
		this.shown = shown;
		this.acts = acts;
	}

	String token() {
		return this.tokens.token();
	}

	PersonalLink.Given given(String token, Instant expiresAt, Actor actor) {
		return new PersonalLink.Given(SecretTokens.digest(token), expiresAt, actor, now());
	}

	/** Show the token that a link was given just now. */
	void show(PersonalLink link, String token) {
		this.shown.show(link.id(), token, link.issuedAt());
	}

	void hide(PersonalLink link) {
		this.shown.hide(link.id());
	}

	/** What a link holds, {@code null} where it is shown no longer. */
	@Nullable String shown(PersonalLink link) {
		return this.shown.find(link.id(), link.issuedAt()).orElse(null);
	}

	/**
	 * Which link that is.
	 * @throws LinkRefused saying why it opens nothing
	 */
	<L extends PersonalLink> L good(PersonalLinkRepository<L> links, String token) throws LinkRefused {
		L link = links.findByTokenDigest(SecretTokens.digest(token))
			.orElseThrow(() -> new LinkRefused(LinkStanding.UNKNOWN));
		LinkStanding standing = link.standing(this.acts.now());
		if (standing != LinkStanding.GOOD) {
			throw new LinkRefused(standing);
		}
		return link;
	}

	/** Take hold of a link of a competition. */
	<L extends PersonalLink> L found(PersonalLinkRepository<L> links, UUID competition, UUID id) {
		return links.lock(id, competition).orElseThrow(() -> NotFoundException.of("personal-link", id));
	}

	/** As precise as it is stored. */
	Instant now() {
		return this.acts.now().truncatedTo(ChronoUnit.MILLIS);
	}

}
