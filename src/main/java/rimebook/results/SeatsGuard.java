package rimebook.results;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.People;
import rimebook.competition.SegmentId;
import rimebook.wording.Sentence;

/**
 * Two people have the seats of referee and accountant, and accounts to sign with: an
 * official is known to the register by name, so the account has to go by the same.
 */
@Component
@Order(3)
class SeatsGuard implements SignatureGuard {

	private final Signatories signatories;

	private final People people;

	SeatsGuard(Signatories signatories, People people) {
		this.signatories = signatories;
		this.people = people;
	}

	@Override
	@Transactional(readOnly = true)
	public List<SignatureChecklist.SignatureCondition> conditions(SegmentId segment) {
		Signatories.SeatedSignatories seated = this.signatories.of(segment);
		String path = "/desk/panel/" + seated.event();
		if (!seated.areTwo()) {
			return List.of(SignatureChecklist.SignatureCondition.missing("seats", seated.sentence(), path));
		}
		Optional<Sentence> strangers = strangers(seated);
		return List.of(strangers.isEmpty() ? SignatureChecklist.SignatureCondition.met("seats", seated.sentence(), path)
				: SignatureChecklist.SignatureCondition.due("seats",
						Sentence.of("results.signatories-without-account", seated.sentence(), strangers.get()), path));
	}

	private Optional<Sentence> strangers(Signatories.SeatedSignatories seated) {
		return Stream.of(seated.referee(), seated.accountant())
			.filter((name) -> this.people.identityOf(name).isEmpty())
			.map(Sentence::said)
			.reduce((one, other) -> Sentence.of("results.or", one, other));
	}

}
