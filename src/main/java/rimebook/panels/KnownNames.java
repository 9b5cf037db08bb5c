package rimebook.panels;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.shared.ListedNames;
import rimebook.shared.Name;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The clubs and teams that are known, to choose from where a bond is written down. A name
 * that is not in the list is compared with those that are: the same in another form is
 * written as it is known, a near miss is asked about.
 */
@Service
@Transactional(readOnly = true)
public class KnownNames {

	private final Competitions competitions;

	private final Entries entries;

	private final OfficialRegister register;

	KnownNames(Competitions competitions, Entries entries, OfficialRegister register) {
		this.competitions = competitions;
		this.entries = entries;
		this.register = register;
	}

	/** The clubs of all teams and officials, by name. */
	public List<String> clubs() {
		Stream<String> ofOfficials = this.register.all().stream().map((official) -> official.view().club());
		return listed(Stream.concat(this.entries.clubs().stream().map(ClubView::name), ofOfficials));
	}

	/** The teams that are entered somewhere, by name. */
	public List<String> teams() {
		return listed(this.competitions.all()
			.stream()
			.flatMap((competition) -> this.competitions.events(competition.id()).stream())
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.map((entry) -> entry.team().name()));
	}

	/**
	 * The club as it is known, or as it was typed where it is new.
	 * @param field the field at fault, for a refusal
	 * @param another whether the person says that it is none of those it is near to
	 * @throws RuleViolationException {@code name-near} if it may be a slip for a known
	 * one
	 */
	public String club(String field, String typed, boolean another) {
		return known(field, Name.optional(field, typed), ListedNames.ofClubs(clubs()), another);
	}

	/** As {@link #club} for a team. */
	public String team(String field, String typed, boolean another) {
		return known(field, Name.optional(field, typed), ListedNames.ofTeams(teams()), another);
	}

	private static List<String> listed(Stream<String> names) {
		return names.filter((name) -> !name.isEmpty()).distinct().sorted(String.CASE_INSENSITIVE_ORDER).toList();
	}

	private static String known(String field, String typed, ListedNames known, boolean another) {
		known.near(typed).filter((near) -> !another).ifPresent((near) -> {
			throw new RuleViolationException("name-near", field, Sentence.of("panels.name-near", typed, near));
		});
		return known.same(typed).orElse(typed);
	}

}
