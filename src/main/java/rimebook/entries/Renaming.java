package rimebook.entries;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.shared.ConflictException;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * Mends the names of clubs and teams. Whatever is shown or published from then on has the
 * new name, in every competition; what was signed keeps the name it was signed with, and
 * a drawn order the names it was drawn with. A change is taken back by another one.
 */
@Service
@Transactional(readOnly = true)
public class Renaming {

	private final ClubRepository clubs;

	private final TeamRepository teams;

	private final ApplicationEventPublisher publisher;

	Renaming(ClubRepository clubs, TeamRepository teams, ApplicationEventPublisher publisher) {
		this.clubs = clubs;
		this.teams = teams;
		this.publisher = publisher;
	}

	/**
	 * The club of that identity.
	 * @throws NotFoundException if there is none
	 */
	public KnownClub club(ClubView.Id id) {
		Club club = found(id);
		UUID other = club.mergedInto();
		return new KnownClub(club.view(), club.version(), club.section(),
				this.teams.findByClubOrderByName(club).stream().map((team) -> team.view().name()).toList(),
				(other != null) ? this.clubs.findById(other).map(Club::view).orElse(null) : null);
	}

	/** All clubs by name, with those that turned out to be another one. */
	public List<KnownClub> clubs() {
		List<Club> all = this.clubs.findAll();
		Map<UUID, ClubView> views = all.stream().collect(Collectors.toMap(Club::id, Club::view));
		Map<UUID, List<String>> teams = this.teams.findAll()
			.stream()
			.collect(Collectors.groupingBy((team) -> team.club().id(),
					Collectors.mapping((team) -> team.view().name(), Collectors.toList())));
		return all.stream()
			.map((club) -> new KnownClub(club.view(), club.version(), club.section(),
					teams.getOrDefault(club.id(), List.of()).stream().sorted().toList(),
					(club.mergedInto() != null) ? views.get(club.mergedInto()) : null))
			.sorted(Comparator.comparing((KnownClub known) -> known.club().name(), String.CASE_INSENSITIVE_ORDER))
			.toList();
	}

	/**
	 * The team of that identity.
	 * @throws NotFoundException if there is none
	 */
	public KnownTeam team(TeamView.Id id) {
		Team team = found(id);
		return new KnownTeam(team.view(), team.version());
	}

	/**
	 * Change the name, the town or the section of a club. Nothing happens where all are
	 * as before.
	 * @throws ConflictException if the version is stale; {@code club-merged} if it turned
	 * out to be another one; {@code club-known} if another club has the name, or has it
	 * in another form
	 */
	@Transactional
	public ClubView change(ChangeClub change, Actor actor) {
		Club club = found(change.club());
		if (club.isMerged()) {
			throw new ConflictException("club-merged", Sentence.of("entries.club-merged", club.view().name()));
		}
		ClubView before = club.view();
		String was = club.inWords();
		this.clubs.findAll()
			.stream()
			.filter((other) -> !other.id().equals(club.id()) && other.isTaken(change.name(), before.name()))
			.findFirst()
			.ifPresent((other) -> {
				throw known(other.view());
			});
		club.change(change);
		flush(() -> known(club.view()));
		if (!club.inWords().equals(was)) {
			this.publisher.publishEvent(new ClubChanged(before, club.view(),
					AuditedChange.of(actor, "club", before.id(), "club.changed").from(was, club.inWords())));
		}
		return club.view();
	}

	/**
	 * Change the name of a team, or how it is said. Nothing happens where both are as
	 * before.
	 * @throws ConflictException if the version is stale; {@code team-known} if another
	 * team of the club has the name, or has it in another form
	 */
	@Transactional
	public TeamView change(ChangeTeam change, Actor actor) {
		Team team = found(change.team());
		TeamView before = team.view();
		String was = team.inWords();
		this.teams.findByClubOrderByName(team.club())
			.stream()
			.filter((other) -> !other.id().equals(team.id()) && other.isTaken(change.name(), before.name()))
			.findFirst()
			.ifPresent((other) -> {
				throw known(other.view());
			});
		team.change(change);
		flush(() -> known(team.view()));
		if (!team.view().equals(before)) {
			this.publisher.publishEvent(new TeamChanged(before, team.view(),
					AuditedChange.of(actor, "team", before.id(), "team.changed").from(was, team.inWords())));
		}
		return team.view();
	}

	/** The same name twice at one moment: the database lets one through. */
	private void flush(Supplier<ConflictException> known) {
		try {
			this.clubs.flush();
		}
		catch (DataIntegrityViolationException ex) {
			throw known.get();
		}
	}

	private static ConflictException known(ClubView club) {
		return new ConflictException("club-known", "name", Sentence.of("entries.club-known", club.name()));
	}

	private static ConflictException known(TeamView team) {
		return new ConflictException("team-known", "name",
				Sentence.of("entries.team-known", team.club().name(), team.name()));
	}

	private Club found(ClubView.Id id) {
		return this.clubs.findById(id.value()).orElseThrow(() -> NotFoundException.of("club", id));
	}

	private Team found(TeamView.Id id) {
		return this.teams.findById(id.value()).orElseThrow(() -> NotFoundException.of("team", id));
	}

	/**
	 * The order to mend what is written down of a club.
	 *
	 * @param version as it was read, so that nobody overwrites another's change
	 * @param name up to 120 characters, unlike every other club's
	 * @param town where the club is at home, up to 120 characters
	 * @param section its country, or the section of its federation, up to 60 characters;
	 * may be empty
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record ChangeClub(ClubView.Id club, int version, String name, String town, String section) {

		public ChangeClub {
			name = Name.required("name", name);
			town = Name.required("town", town);
			section = Required.optional("section", Name.optional("section", section), 60);
		}

	}

	/**
	 * The order to mend what is written down of a team.
	 *
	 * @param version as it was read, so that nobody overwrites another's change
	 * @param name up to 120 characters, unlike every other team's of the club
	 * @param spokenAs how the announcer says the name, up to 120 characters; empty when
	 * as it is written
	 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
	 */
	public record ChangeTeam(TeamView.Id team, int version, String name, String spokenAs) {

		public ChangeTeam {
			name = Name.required("name", name);
			spokenAs = Name.optional("spokenAs", spokenAs);
		}

	}

	/**
	 * A club as it is written down, to be mended.
	 *
	 * @param version give it back with a change, so that nobody overwrites another's
	 * @param section its country or section, empty where that is not known
	 * @param teams the names of its teams
	 * @param other which club it turned out to be, {@code null} while it is one of its
	 * own
	 */
	public record KnownClub(ClubView club, int version, String section, List<String> teams, @Nullable ClubView other) {

		public KnownClub {
			teams = List.copyOf(teams);
		}

	}

	/**
	 * A team as it is written down, to be mended.
	 *
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record KnownTeam(TeamView team, int version) {

	}

	/** What is written down of a club was mended, or it turned out to be another one. */
	public record ClubChanged(ClubView before, ClubView after, AuditedChange change) implements AuditedEvent {

	}

	/** The name of a team, or how it is said, was mended. */
	public record TeamChanged(TeamView before, TeamView after, AuditedChange change) implements AuditedEvent {

	}

}
