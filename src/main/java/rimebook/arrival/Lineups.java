package rimebook.arrival;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceEvent;
import rimebook.rosters.KeptRoster;
import rimebook.rosters.Rosters;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * Keeps who was on the ice in each segment: the roster as it is when the team is called.
 * A roster changes until the next segment; what was kept does not, unless the referee
 * says that it was otherwise. Identities and places are kept and nothing of a person, so
 * it may stay for ever.
 */
@Service
@Transactional(readOnly = true)
public class Lineups {

	private static final int LONGEST_REASON = 300;

	private final LineupRepository lineups;

	private final Rosters rosters;

	private final Skaters skaters;

	private final Entries entries;

	private final Competitions competitions;

	private final StillOpen stillOpen;

	private final Acts acts;

	Lineups(LineupRepository lineups, Rosters rosters, Skaters skaters, Entries entries, Competitions competitions,
			StillOpen stillOpen, Acts acts) {
		this.lineups = lineups;
		this.rosters = rosters;
		this.skaters = skaters;
		this.entries = entries;
		this.competitions = competitions;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * A team that is called has on the ice who is to skate now; nothing is kept where
	 * nobody wrote a roster down, or where the same is kept already.
	 */
	@EventListener
	@Transactional
	public void on(PerformanceEvent.Called called) {
		KeptRoster now = this.rosters.of(called.entry()).kept();
		Lineup last = last(called.entry()).get(called.segment());
		if (!now.onIce().isEmpty() && (last == null || !last.roster().equals(now))) {
			keep(called.segment(), last, now, "", called.change().actor());
		}
	}

	/**
	 * Say that those who skate by the roster as it is now were on the ice in a segment,
	 * in place of what was kept; nothing happens where that is the same.
	 * @param seen the number of what was looked at
	 * @param reason why, up to 300 characters; it stays on the record for ever
	 * @throws ConflictException {@code stale-version}; {@code lineup-empty} where nobody
	 * skates by the roster; what {@link StillOpen} refuses
	 * @throws NotFoundException if the team was never called in that segment
	 */
	@Transactional
	public void correct(EntryId id, SegmentId segment, int seen, String reason, Actor actor) {
		EntryView entry = this.entries.entry(id);
		this.competitions.holding(entry.event());
		this.stillOpen.require(entry.event());
		String why = Required.text("reason", reason, LONGEST_REASON);
		Lineup last = last(id).get(segment);
		if (last == null) {
			throw NotFoundException.of("lineup", segment);
		}
		ConflictException.requireSeen("lineup", seen, last.number());
		KeptRoster now = this.rosters.of(id).kept();
		if (now.onIce().isEmpty()) {
			throw new ConflictException("lineup-empty", Sentence.of("arrival.lineup-empty"));
		}
		if (!last.roster().equals(now)) {
			keep(segment, last, now, why, actor);
		}
	}

	private void keep(SegmentId segment, @Nullable Lineup last, KeptRoster roster, String reason, Actor actor) {
		int number = (last != null) ? last.number() + 1 : 1;
		this.lineups.saveAndFlush(new Lineup(this.acts.nextId(), segment, number, roster,
				new Lineup.Kept(actor, this.acts.now(), reason)));
		AuditedChange line = AuditedChange.of(actor, "lineup", roster.entry(),
				(last != null) ? "lineup.changed" : "lineup.kept");
		this.acts.publish((last != null) ? line.from(inWords(last.roster()), inWords(roster)).because(reason)
				: line.to(inWords(roster)));
	}

	private static String inWords(KeptRoster roster) {
		return roster.onIce()
			.stream()
			.map((place) -> String.valueOf(place.number()))
			.collect(Collectors.joining(", ", "places ", " on the ice"));
	}

	/**
	 * Who was on the ice for a team, segment by segment in the order in which it skated
	 * them; none where it was not called yet.
	 */
	public List<LineupView> of(EntryId entry) {
		List<Lineup> kept = List.copyOf(last(entry).values());
		Map<SkaterView.Id, SkaterView> known = this.skaters.today(kept.stream()
			.flatMap((lineup) -> lineup.roster().onIce().stream())
			.map(KeptRoster.Place::skater)
			.toList());
		return kept.stream()
			.map((lineup) -> new LineupView(lineup.segment(), lineup.number(),
					lineup.roster().onIce().stream().map((place) -> person(place, known)).toList(), lineup.reason(),
					lineup.kept()))
			.toList();
	}

	private static LineupView.Person person(KeptRoster.Place place, Map<SkaterView.Id, SkaterView> known) {
		SkaterView skater = known.get(place.skater());
		return new LineupView.Person(place, (skater == null || skater.isErased()) ? "" : skater.name());
	}

	/** What counts of each segment. */
	private Map<SegmentId, Lineup> last(EntryId entry) {
		Map<SegmentId, Lineup> last = new LinkedHashMap<>();
		this.lineups.findByEntryOrderByNumber(entry.value()).forEach((lineup) -> last.put(lineup.segment(), lineup));
		return last;
	}

}
