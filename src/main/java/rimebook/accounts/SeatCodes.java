package rimebook.accounts;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The codes that judges' tablets join with: one a seat, of 8 characters without
 * look-alikes, of which only a digest is kept. Whoever types it holds the seat with a
 * signed token of 32 random bytes, of which only the digest is kept; the newest tablet
 * wins and the one before it is shut out, once it is quiet or the referee says yes.
 */
@Service
public class SeatCodes {

	private static final Duration HEARD_STEP = Duration.ofSeconds(5);

	private static final int DEVICE_LENGTH = 200;

	private static final int MOST_WAITING = 9999;

	private final SeatCodeRepository codes;

	private final SecretTokens tokens;

	private final CodeDigests digests;

	private final ShownCodes shown;

	private final CrewSigns signs;

	private final Acts acts;

	SeatCodes(SeatCodeRepository codes, SecretTokens tokens, CodeDigests digests, ShownCodes shown, CrewSigns signs,
			Acts acts) {
		this.acts = acts;
		this.digests = digests;
		this.shown = shown;
		this.codes = codes;
		this.tokens = tokens;
		this.signs = signs;
	}

	/**
	 * Make a code for a seat. A code made before, and the tablet that joined with it, are
	 * void from now on.
	 * @param seat the seat's identity
	 * @param label how the seat stands on the record, such as {@code "Judge 3, Adult"}
	 * @param actor who asks for it
	 * @return the code
	 */
	@Transactional
	public String issue(UUID seat, String label, Actor actor) {
		String code = this.tokens.code();
		String digest = this.digests.of(code);
		if (this.codes.existsByCodeDigest(digest)) {
			return issue(seat, label, actor);
		}
		Instant now = this.acts.now().truncatedTo(ChronoUnit.MILLIS);
		Optional<SeatCode> former = this.codes.findById(seat);
		former.ifPresentOrElse((known) -> known.reissue(label, digest, now),
				() -> this.codes.save(new SeatCode(seat, label, digest, now)));
		this.shown.show(seat, code, now);
		this.acts.publish(AuditedChange.of(actor, "seat", seat, "seat.code-issued")
			.from(former.isPresent() ? "an earlier code for " + label : "", "a new code for " + label));
		return code;
	}

	/**
	 * How tablets come to these seats, each seat with an answer. One question to the
	 * database for all of them, since every card asks for its panel.
	 */
	@Transactional(readOnly = true)
	public Map<UUID, Access> accessTo(Collection<UUID> seats) {
		Map<UUID, Access> access = new HashMap<>();
		seats.forEach((seat) -> access.put(seat, Access.NONE));
		this.codes.findBySeatIdIn(seats).forEach((code) -> access.put(code.grant().seat(), access(code)));
		return access;
	}

	private Access access(SeatCode code) {
		return new Access(this.shown.find(code.grant().seat(), code.issuedAt()).orElse(null), code.device());
	}

	/** Tell whether a seat has a code, shown or not. */
	@Transactional(readOnly = true)
	public boolean hasCode(UUID seat) {
		return this.codes.findById(seat).isPresent();
	}

	/**
	 * Give the seat of a code to a tablet, or let it ask for the seat while another one
	 * that has it is alive. Small letters, blanks and hyphens in the code do not matter.
	 * @param code what was typed or scanned
	 * @param device the tablet's address and browser
	 * @param held the seat that this very tablet has, {@code null} for none
	 * @return the seat and the token to show from now on
	 * @throws RuleViolationException {@code seat-code-unknown} on the field {@code code}
	 */
	@Transactional
	public Pairing pair(String code, String device, @Nullable Grant held) {
		return pair(code, device, held, null);
	}

	/**
	 * As {@link #pair(String, String, Grant)}; the same request sent again gets the same
	 * token, and nothing is done a second time.
	 * @param request what the request is known by, made at random; {@code null} for one
	 * that is only sent once
	 */
	@Transactional
	public Pairing pair(String code, String device, @Nullable Grant held, @Nullable UUID request) {
		String digest = this.digests.of(code);
		SeatCode seat = this.codes.findByCodeDigest(digest).orElseThrow(SeatCodes::unknown);
		String token = token(digest, request);
		Optional<Pairing> before = before(seat, token);
		if (before.isPresent()) {
			return before.get();
		}
		boolean own = held != null && held.seat().equals(seat.grant().seat());
		return (!own && seat.isLive(this.acts.now().minus(SeatTakeovers.ALIVE))) ? ask(seat, token, device)
				: pair(seat, token, device);
	}

	/**
	 * Of a request that may come twice the token is made from it with the service's key,
	 * since no token is kept from which the first answer could be given again.
	 */
	private String token(String digest, @Nullable UUID request) {
		return this.signs
			.signed((request != null) ? this.signs.secretOf("seat:" + digest + ":" + request) : this.tokens.token());
	}

	/** What this very request led to before, while that still holds. */
	private Optional<Pairing> before(SeatCode seat, String token) {
		String digest = SecretTokens.digest(token);
		boolean held = seat.isHeldBy(digest);
		boolean waits = seat.isAskedBy(digest, this.acts.now().minus(SeatTakeovers.KEPT));
		return (held || waits) ? Optional.of(new Pairing(seat.grant(), token, !held)) : Optional.empty();
	}

	private Pairing ask(SeatCode seat, String token, String device) {
		String name = device.substring(0, Math.min(device.length(), DEVICE_LENGTH));
		seat.ask(SecretTokens.digest(token), name, this.acts.now().truncatedTo(ChronoUnit.MILLIS));
		Grant grant = seat.grant();
		this.acts.publish(
				AuditedChange
					.of(new Actor("seat:" + grant.seat(), grant.label(), Role.JUDGE.word(), name), "seat", grant.seat(),
							"seat.asked-for")
					.from(seat.deviceName(), name));
		return new Pairing(grant, token, true);
	}

	private Pairing pair(SeatCode seat, String token, String device) {
		String former = seat.deviceName();
		String name = device.substring(0, Math.min(device.length(), DEVICE_LENGTH));
		seat.pair(SecretTokens.digest(token), name, this.acts.now());
		this.shown.hide(seat.grant().seat());
		Grant grant = seat.grant();
		this.acts.publish(
				AuditedChange
					.of(new Actor("seat:" + grant.seat(), grant.label(), Role.JUDGE.word(), name), "seat", grant.seat(),
							"seat.paired")
					.from(former, name));
		return new Pairing(grant, token, false);
	}

	/**
	 * The seat that a token stands for; empty if it stands for none (any more). Hearing
	 * from the tablet is noted.
	 */
	@Transactional
	public Optional<Grant> grantOf(String token) {
		Instant now = this.acts.now();
		Optional<SeatCode> seat = this.codes.findByDeviceDigest(SecretTokens.digest(token));
		Optional<Grant> grant = seat.map(SeatCode::grant);
		seat.filter((code) -> !code.wasHeardSince(now.minus(HEARD_STEP)))
			.ifPresent((code) -> this.codes.heard(code.grant().seat(), now, now.minus(HEARD_STEP)));
		return grant;
	}

	/**
	 * Note what a tablet says of itself. Nothing is written while it says the same.
	 * @param waiting how many cards it has not been able to hand over
	 * @param faulty whether its page could not show everything
	 * @throws RuleViolationException on the field {@code waiting} unless it is 0 to 9999
	 */
	@Transactional
	public void noteTablet(UUID seat, int waiting, boolean faulty) {
		Required.number("waiting", waiting, 0, MOST_WAITING);
		this.codes.findById(seat)
			.filter((code) -> !code.hasTold(waiting, faulty))
			.ifPresent((code) -> this.codes.told(seat, waiting, faulty));
	}

	private static RuleViolationException unknown() {
		return new RuleViolationException("seat-code-unknown", "code",
				Sentence.of("accounts.seat-code-unknown", SecretTokens.CODE_LENGTH));
	}

	/**
	 * How a tablet comes to a seat, and which one is there.
	 *
	 * @param shownCode the code to be printed on the seat's slip; null if none was issued
	 * or it is shown no longer, since a tablet has joined or it was made on another node,
	 * before this one started or over a day ago. It is kept as a digest only.
	 * @param device the tablet that holds the seat; all empty if none does
	 */
	public record Access(@Nullable String shownCode, Device device) {

		static final Access NONE = new Access(null, Device.NONE);

	}

	/**
	 * The tablet that holds a seat.
	 *
	 * @param pairedAt when it joined, null if none has
	 * @param lastHeardAt when it last asked for something, to within a few seconds, null
	 * if none has joined
	 * @param device its address and browser, empty if none has joined
	 * @param waiting how many cards it has not been able to hand over, as it last said
	 * @param faulty whether its page could not show everything, as it last said
	 * @param issuedAt when the code that it joins with was issued, null if none was
	 */
	public record Device(@Nullable Instant pairedAt, @Nullable Instant lastHeardAt, String device, int waiting,
			boolean faulty, @Nullable Instant issuedAt) {

		static final Device NONE = new Device(null, null, "", 0, false, null);

	}

	/**
	 * What a paired tablet may act for: one seat of one panel.
	 *
	 * @param seat the seat's identity
	 * @param label the seat as printed on the record, such as {@code "Judge 3, Adult"}
	 */
	public record Grant(UUID seat, String label) implements Serializable {
	}

	/**
	 * A tablet's new hold on a seat.
	 *
	 * @param seat what it may act for
	 * @param token what it must show with every request; kept nowhere else
	 * @param waiting whether the token opens nothing before the referee says yes, since
	 * the seat's own tablet is alive
	 */
	public record Pairing(SeatCodes.Grant seat, String token, boolean waiting) {

		@Override
		public String toString() {
			return "Pairing[seat=" + this.seat + ", token=(secret)]";
		}

	}

}
