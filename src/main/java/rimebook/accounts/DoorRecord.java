package rimebook.accounts;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

/**
 * Puts on the record, and into the log, who came in and who was not let in. Each sign-in
 * is a line; failures are summed up by account or network and day, since a stranger
 * decides how many there are. A name that nobody has is never written down: people type
 * their password there.
 */
@Service
public class DoorRecord {

	private static final Log log = LogFactory.getLog(DoorRecord.class);

	private final PersonRepository people;

	private final AttemptTally tally;

	private final ApplicationEventPublisher events;

	DoorRecord(PersonRepository people, AttemptTally tally, ApplicationEventPublisher events) {
		this.people = people;
		this.tally = tally;
		this.events = events;
	}

	/** Somebody signed in. */
	@Transactional
	public void signedIn(SignedIn person, String device) {
		tell(AuditedChange.of(actor(person, device), "person", person.person(), "person.signed-in").to("signed in"));
	}

	/**
	 * A name and a password did not fit.
	 * @param typed the name as typed
	 * @param network where from, as far as it is counted together
	 */
	@Transactional
	public void failed(String typed, String network, String device) {
		Person known = this.people.findBySignInName(SignInName.typed(typed)).orElse(null);
		String subject = (known != null) ? known.id().toString() : network;
		AttemptTally.Count count = this.tally.count(AttemptTally.Kind.FAILED, subject);
		String who = (known != null) ? "password of " + known.view().displayName() + " not known"
				: "name that nobody has";
		tellStranger(count, AuditedChange.of(stranger(device), "person", (known != null) ? subject : "nobody",
				"person.sign-in-failed"), who);
	}

	/**
	 * Somebody who is signed in was asked for their password once more and did not know
	 * it: perhaps another person sits at their desk. Called outside the transaction of
	 * the act, which comes to nothing.
	 * @param what what it was asked for, such as "a signature"
	 * @param actor the person whose desk it is
	 */
	@Transactional
	public void notTheirs(SignedIn person, String what, Actor actor) {
		AttemptTally.Count count = this.tally.count(AttemptTally.Kind.ASKED_AGAIN, person.person().toString());
		if (count.isWorthALine()) {
			tell(AuditedChange.of(actor, "person", person.person(), "person.password-wrong")
				.to("wrong password for " + what + ", " + count.words()));
		}
	}

	/** Somebody was stopped from trying passwords, links or the like for a while. */
	@Transactional
	public void stopped(String network, String device) {
		AttemptTally.Count count = this.tally.count(AttemptTally.Kind.STOPPED, network);
		tellStranger(count, AuditedChange.of(stranger(device), "person", "nobody", "person.guessing-stopped"),
				"too many attempts failed");
	}

	/**
	 * Somebody who is signed in asked for what their roles do not open.
	 * @param path what for
	 */
	@Transactional
	public void refused(SignedIn person, String path, String device) {
		AttemptTally.Count count = this.tally.count(AttemptTally.Kind.REFUSED, person.person().toString());
		if (count.isWorthALine()) {
			tell(AuditedChange.of(actor(person, device), "person", person.person(), "person.refused")
				.to("not let in at " + path.substring(0, Math.min(path.length(), 200)) + ", " + count.words()));
		}
	}

	private void tellStranger(AttemptTally.Count count, AuditedChange change, String what) {
		if (count.isWorthALine()) {
			tell(change.to(what + ", " + count.words()));
		}
	}

	private static Actor stranger(String device) {
		return new Actor("Unknown", "nobody", device);
	}

	private void tell(AuditedChange change) {
		log.info(change.action() + " " + change.actor().name() + " from " + change.actor().device() + ": "
				+ change.after());
		this.events.publishEvent(change);
	}

	private static Actor actor(SignedIn person, String device) {
		String role = person.getAuthorities()
			.stream()
			.map(GrantedAuthority::getAuthority)
			.sorted()
			.findFirst()
			.map((authority) -> Role.valueOf(authority.substring("ROLE_".length())).word())
			.orElse("no role");
		return new Actor("person:" + person.person(), person.displayName(), role, device);
	}

}
