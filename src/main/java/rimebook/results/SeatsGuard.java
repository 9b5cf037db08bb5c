package rimebook.results;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.People;
import rimebook.competition.SegmentId;

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
		String strangers = strangers(seated);
		return List
			.of(strangers.isEmpty() ? SignatureChecklist.SignatureCondition.met("seats", seated.sentence(), path)
					: SignatureChecklist.SignatureCondition.due("seats", seated.sentence()
							+ " No account goes by the name " + strangers + " yet; it has to be that of the register.",
							path));
	}

	private String strangers(Signatories.SeatedSignatories seated) {
		return Stream.of(seated.referee(), seated.accountant())
			.filter((name) -> this.people.identityOf(name).isEmpty())
			.collect(Collectors.joining(" or "));
	}

}
