package rimebook.entries;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.shared.ConflictException;
import rimebook.shared.FoldedName;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Two clubs that were written down turn out to be one. The teams of the one, with their
 * entries, go to the other; what was written down of the one stays beside it, so nothing
 * is lost and it can be taken back. What others keep by the identity of the one is theirs
 * to read as the other's as long as it lasts. Signed results and drawn orders keep the
 * name they have.
 */
@Service
@Transactional(readOnly = true)
public class OneClub {

	private final ClubRepository clubs;

	private final TeamRepository teams;

	private final EntryRepository entries;

	private final Competitions competitions;

	private final Acts acts;

	OneClub(ClubRepository clubs, TeamRepository teams, EntryRepository entries, Competitions competitions, Acts acts) {
		this.clubs = clubs;
		this.teams = teams;
		this.entries = entries;
		this.competitions = competitions;
		this.acts = acts;
	}

	/** The other clubs that it may be, those of a similar name first. */
	public List<ClubView> candidates(ClubView.Id id) {
		FoldedName name = FoldedName.ofClub(found(id).view().name());
		return this.clubs.findByMergedIntoIsNull()
			.stream()
			.map(Club::view)
			.filter((club) -> !club.id().equals(id))
			.sorted(Comparator.comparing((ClubView club) -> !name.isNear(FoldedName.ofClub(club.name())))
				.thenComparing(ClubView::name, String.CASE_INSENSITIVE_ORDER))
			.toList();
	}

	/**
	 * What it would mean that a club is that other one. Nothing is written.
	 * @throws NotFoundException if there is no such club
	 */
	public Preview preview(ClubView.Id one, ClubView.Id other) {
		Club first = found(one);
		Club second = found(other);
		List<Team> moving = this.teams.findByClubOrderByName(first);
		List<Team> there = this.teams.findByClubOrderByName(second);
		return new Preview(first.view(), first.version(), second.view(), second.version(), names(moving),
				names(moving.stream().filter((team) -> isThere(team, there)).toList()));
	}

	/** The clubs that turned out to be that one. */
	public List<ClubView> alsoWrittenDown(ClubView.Id id) {
		return this.clubs.findByMergedInto(id.value()).stream().map(Club::view).toList();
	}

	/**
	 * Say that a club is another one that is known.
	 * @return the other
	 * @throws ConflictException {@code stale-version}; {@code club-merged} if either
	 * turned out to be another one before; {@code club-has-others} if others turned out
	 * to be the one; {@code club-team-twice} if both have a team of a name
	 * @throws RuleViolationException {@code club-itself}; naming the field that does not
	 * fit
	 */
	@Transactional
	public ClubView merge(Merge order, Actor actor) {
		if (order.one().equals(order.other())) {
			throw RuleViolationException.ofField("club-itself", "other", Sentence.of("entries.club-itself"));
		}
		hold(order.one(), order.other());
		Club one = found(order.one());
		Club other = found(order.other());
		ConflictException.requireSeen("club", order.version(), one.version());
		ConflictException.requireSeen("club", order.otherVersion(), other.version());
		requireOwn(one);
		requireOwn(other);
		if (!this.clubs.findByMergedInto(order.one().value()).isEmpty()) {
			throw new ConflictException("club-has-others", Sentence.of("entries.club-has-others", one.view().name()));
		}
		List<Team> moving = this.teams.findByClubOrderByName(one);
		List<Team> there = this.teams.findByClubOrderByName(other);
		moving.stream().filter((team) -> isThere(team, there)).findFirst().ifPresent((team) -> {
			throw new ConflictException("club-team-twice", "other",
					Sentence.of("entries.club-team-twice", team.view().name()));
		});
		ClubView before = one.view();
		List<String> was = moving.stream().map(Team::inWords).toList();
		moving.forEach((team) -> team.giveTo(other));
		one.mergeInto(other);
		flush();
		AuditedChange line = AuditedChange.of(actor, "club", before.id(), "club.merged")
			.from(one.inWords(), "the same club as " + other.inWords())
			.because(order.reason());
		this.acts.publish(new Renaming.ClubChanged(before, other.view(), line));
		say(moving, was, "team.given-over", actor);
		return other.view();
	}

	/**
	 * Say that a club is one of its own after all: the teams that went over come back.
	 * @throws ConflictException {@code stale-version}; {@code club-apart} if it is one of
	 * its own; {@code club-team-twice} if it was given a team of a name meanwhile
	 */
	@Transactional
	public ClubView separate(ClubView.Id id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		UUID with = found(id).mergedInto();
		if (with == null) {
			throw new ConflictException("club-apart", Sentence.of("entries.club-apart", found(id).view().name()));
		}
		hold(id, new ClubView.Id(with));
		Club one = found(id);
		Club other = found(new ClubView.Id(with));
		ConflictException.requireSeen("club", version, one.version());
		List<Team> back = this.teams.findByClubAndMergedFromOrderByName(other, one.id());
		List<String> was = back.stream().map(Team::inWords).toList();
		back.forEach((team) -> team.giveBackTo(one));
		one.separate();
		flush();
		this.acts.publish(new Separated(one.view(),
				AuditedChange.of(actor, "club", id, "club.separated")
					.from("the same club as " + other.inWords(), one.inWords())
					.because(why)));
		say(back, was, "team.given-back", actor);
		return one.view();
	}

	private void say(List<Team> teams, List<String> was, String act, Actor actor) {
		for (int at = 0; at < teams.size(); at++) {
			Team team = teams.get(at);
			this.acts.publish(AuditedChange.of(actor, "team", team.id(), act).from(was.get(at), team.inWords()));
		}
	}

	private void flush() {
		try {
			this.clubs.flush();
		}
		catch (DataIntegrityViolationException ex) {
			throw ConflictException.stale("club");
		}
	}

	private static boolean isThere(Team team, List<Team> there) {
		return there.stream().anyMatch((known) -> known.isCalled(team.view().name()));
	}

	private static List<String> names(List<Team> teams) {
		return teams.stream().map((team) -> team.view().name()).toList();
	}

	private static void requireOwn(Club club) {
		if (club.isMerged()) {
			throw new ConflictException("club-merged", Sentence.of("entries.club-merged", club.view().name()));
		}
	}

	/** Their competitions, in one order, so that nobody waits for somebody who waits. */
	private void hold(ClubView.Id one, ClubView.Id other) {
		Set<UUID> events = new HashSet<>(this.entries.eventsOf(Set.of(one.value(), other.value())));
		events.stream()
			.map((event) -> this.competitions.event(new EventId(event)).competition())
			.map(CompetitionId::value)
			.distinct()
			.sorted()
			.collect(Collectors.toList())
			.forEach((competition) -> this.competitions.holding(new CompetitionId(competition)));
	}

	private Club found(ClubView.Id id) {
		return this.clubs.findById(id.value()).orElseThrow(() -> NotFoundException.of("club", id));
	}

	/**
	 * The order to say that a club is another one.
	 *
	 * @param one whose teams go to the other, with the version that was seen
	 * @param other which stays, with the version that was seen
	 * @param reason up to 500 characters, kept on the record
	 */
	public record Merge(ClubView.Id one, int version, ClubView.Id other, int otherVersion, String reason) {

		public Merge {
			reason = Required.text("reason", reason, 500);
		}

	}

	/**
	 * What it would mean that a club is another one.
	 *
	 * @param teams the names of the teams that go over
	 * @param twice those that both have, which forbids it
	 */
	public record Preview(ClubView one, int version, ClubView other, int otherVersion, List<String> teams,
			List<String> twice) {

		public Preview {
			teams = List.copyOf(teams);
			twice = List.copyOf(twice);
		}

	}

	/** A club is one of its own after all. */
	public record Separated(ClubView club, AuditedChange change) implements AuditedEvent {
	}

}
