package rimebook.rosters.eligibility;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * A team and who is on its roster, in any order.
 */
public record Team(String name, List<Member> members) {

	public Team {
		members = List.copyOf(members);
	}

	List<Member> onIce() {
		return this.members.stream().filter((member) -> !member.alternate()).toList();
	}

	int alternates() {
		return this.members.size() - onIce().size();
	}

	Set<String> people() {
		return this.members.stream().map(Member::id).collect(Collectors.toSet());
	}

	/**
	 * Somebody on a roster.
	 *
	 * @param id who it is, the same on every roster
	 * @param name given and family name
	 * @param alternate whether they stand by and do not skate unless somebody leaves
	 * @param birthDate {@code null} where it is not known
	 * @param membershipNumber empty where it is not known
	 */
	public record Member(String id, String name, boolean alternate, @Nullable LocalDate birthDate,
			String membershipNumber) {
	}

}
