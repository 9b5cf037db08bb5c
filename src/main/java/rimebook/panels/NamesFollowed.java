package rimebook.panels;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.Renaming;
import rimebook.shared.Actor;
import rimebook.shared.FoldedName;
import rimebook.shared.Name;

/**
 * The register writes clubs and teams by their names. When one is mended the register
 * follows in the same transaction, so that no bond is lost by it.
 */
@Component
class NamesFollowed {

	private final OfficialRegister register;

	private final DeclaredInterests interests;

	private final Entries entries;

	NamesFollowed(OfficialRegister register, DeclaredInterests interests, Entries entries) {
		this.register = register;
		this.interests = interests;
		this.entries = entries;
	}

	@EventListener
	void on(Renaming.ClubChanged changed) {
		if (!changed.before().name().equals(changed.after().name())) {
			this.register.all()
				.stream()
				.map(Official::view)
				.filter((official) -> isOf(official.club(), changed))
				.forEach((official) -> this.register.change(official.id(), official.version(),
						new DraftOfficial(official.name(), changed.after().name(), official.qualification()),
						changed.change().actor()));
		}
	}

	/**
	 * Written like the club, or in another form of its name that no other club answers
	 * to.
	 */
	private boolean isOf(String club, Renaming.ClubChanged changed) {
		String before = changed.before().name();
		return Name.compared(club).equals(Name.compared(before))
				|| (isSame(club, before) && !isAnothers(club, changed.after().id()));
	}

	private boolean isAnothers(String club, ClubView.Id changed) {
		return this.entries.clubs()
			.stream()
			.anyMatch((other) -> !other.id().equals(changed) && isSame(club, other.name()));
	}

	private static boolean isSame(String one, String other) {
		return FoldedName.ofClub(one).isSameAs(FoldedName.ofClub(other));
	}

	/**
	 * A bond names the team alone and may be to a team of that name in another club; so
	 * the old one stays and the same to the new name is added.
	 */
	@EventListener
	void on(Renaming.TeamChanged changed) {
		String now = changed.after().name();
		Actor actor = changed.change().actor();
		this.interests.to(changed.before().name())
			.stream()
			.filter((interest) -> !interest.isOf(now))
			.forEach(
					(interest) -> this.interests.alsoTo(now, interest, this.register.find(interest.official()), actor));
	}

}
