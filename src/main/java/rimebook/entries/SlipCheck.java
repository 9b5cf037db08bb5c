package rimebook.entries;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Asks about a club or a team that is not known but nearly called like one that is, so
 * that a slip does not silently make another one.
 */
@Service
@Transactional(readOnly = true)
public class SlipCheck {

	private final TeamRegister register;

	SlipCheck(TeamRegister register) {
		this.register = register;
	}

	/**
	 * Ask before a team is entered.
	 * @throws RuleViolationException {@code name-near}, naming the field, if its club or,
	 * among the teams of its club, its name may be a slip
	 */
	public void check(EnterTeam order) {
		this.register.known().slip(order.club(), order.team()).ifPresent((slip) -> {
			throw new RuleViolationException("name-near", slip.field(),
					Sentence.of("entries.name-near.asked", slip.spoken()));
		});
	}

}
