package rimebook.rosters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.FoldedName;

/**
 * Finds people of whom something is known by any part of their name, in all competitions:
 * those who skate and those who can be called about a team.
 */
@Service
@Transactional(readOnly = true)
public class PeopleSearch {

	/** Who finds more of them types more of the name. */
	public static final int MOST = 100;

	private final Skaters skaters;

	private final Contacts contacts;

	PeopleSearch(Skaters skaters, Contacts contacts) {
		this.skaters = skaters;
		this.contacts = contacts;
	}

	/**
	 * Who has that in their name, in whatever case and form; nobody for less than two
	 * letters.
	 */
	public Found find(String name) {
		String part = FoldedName.of(name).key();
		if (part.length() < 2) {
			return new Found(List.of(), List.of());
		}
		List<SkaterView> skaters = this.skaters.all()
			.stream()
			.filter((skater) -> isIn(part, skater.name())
					|| isIn(part, skater.facts().familyName() + " " + skater.facts().givenName()))
			.limit(MOST)
			.toList();
		Map<String, List<ContactView>> contacts = new LinkedHashMap<>();
		this.contacts.all()
			.stream()
			.filter((contact) -> isIn(part, contact.name()))
			.forEach((contact) -> contacts
				.computeIfAbsent(FoldedName.of(contact.name()).key(), (key) -> new ArrayList<>())
				.add(contact));
		return new Found(skaters,
				contacts.values().stream().limit(MOST).map((same) -> new Called(same.get(0), same.size())).toList());
	}

	private static boolean isIn(String part, String name) {
		return FoldedName.of(name).key().contains(part);
	}

	/**
	 * Who was found, each at most {@link #MOST}.
	 *
	 * @param contacts those who can be called, each name once
	 */
	public record Found(List<SkaterView> skaters, List<Called> contacts) {

		/** Tell whether there may be more who were not listed. */
		public boolean isCutOff() {
			return this.skaters.size() == MOST || this.contacts.size() == MOST;
		}

	}

	/**
	 * A name of people who can be called.
	 *
	 * @param first one of those who have it
	 * @param lists on how many lists it stands
	 */
	public record Called(ContactView first, int lists) {
	}

}
