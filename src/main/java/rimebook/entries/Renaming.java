package rimebook.entries;

import java.util.function.Supplier;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

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
	public KnownClub club(ClubId id) {
		Club club = found(id);
		return new KnownClub(club.view(), club.version(),
				this.teams.findByClubOrderByName(club).stream().map((team) -> team.view().name()).toList());
	}

	/**
	 * The team of that identity.
	 * @throws NotFoundException if there is none
	 */
	public KnownTeam team(TeamId id) {
		Team team = found(id);
		return new KnownTeam(team.view(), team.version());
	}

	/**
	 * Change the name or the town of a club. Nothing happens where both are as before.
	 * @throws ConflictException if the version is stale; {@code club-known} if another
	 * club has the name
	 */
	@Transactional
	public ClubView change(ChangeClub change, Actor actor) {
		Club club = found(change.club());
		ClubView before = club.view();
		String was = club.inWords();
		this.clubs.findFirstByNameIgnoreCaseOrderByName(change.name())
			.filter((other) -> !other.id().equals(club.id()))
			.ifPresent((other) -> {
				throw known(change);
			});
		club.change(change);
		flush(() -> known(change));
		if (!club.view().equals(before)) {
			this.publisher.publishEvent(new ClubChanged(before, club.view(),
					AuditedChange.of(actor, "club", before.id(), "club.changed").from(was, club.inWords())));
		}
		return club.view();
	}

	/**
	 * Change the name of a team, or how it is said. Nothing happens where both are as
	 * before.
	 * @throws ConflictException if the version is stale; {@code team-known} if another
	 * team of the club has the name
	 */
	@Transactional
	public TeamView change(ChangeTeam change, Actor actor) {
		Team team = found(change.team());
		TeamView before = team.view();
		String was = team.inWords();
		this.teams.findFirstByClubAndNameIgnoreCaseOrderByName(team.club(), change.name())
			.filter((other) -> !other.id().equals(team.id()))
			.ifPresent((other) -> {
				throw known(change, before);
			});
		team.change(change);
		flush(() -> known(change, before));
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

	private static ConflictException known(ChangeClub change) {
		return new ConflictException("club-known", "name",
				"There is a club '" + change.name() + "' already; two clubs cannot be made one here.");
	}

	private static ConflictException known(ChangeTeam change, TeamView team) {
		return new ConflictException("team-known", "name",
				team.club().name() + " has a team '" + change.name() + "' already; two teams cannot be made one here.");
	}

	private Club found(ClubId id) {
		return this.clubs.findById(id.value()).orElseThrow(() -> NotFoundException.of("club", id));
	}

	private Team found(TeamId id) {
		return this.teams.findById(id.value()).orElseThrow(() -> NotFoundException.of("team", id));
	}

}
