package rimebook.managers;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.live.PublicTelling;
import rimebook.music.Music;
import rimebook.music.MusicDeadlines;
import rimebook.music.MusicView;
import rimebook.rosters.RosterCheck;
import rimebook.rosters.TeamCheck;
import rimebook.rosters.eligibility.Finding;
import rimebook.rosters.eligibility.Rule;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * The team of a link: what is still missing of it and until when, and what everybody is
 * told of it.
 */
@Service
@Transactional(readOnly = true)
public class OwnTeam {

	private static final Comparator<Missing> BY_DEADLINE = Comparator.comparing(Missing::until,
			Comparator.nullsLast(Comparator.naturalOrder()));

	private final Competitions competitions;

	private final Entries entries;

	private final RosterCheck check;

	private final PlannedElements plans;

	private final RequiredElements required;

	private final Music music;

	private final MusicDeadlines deadlines;

	private final PublicTelling telling;

	private final Clock clock;

	OwnTeam(Competitions competitions, Entries entries, RosterCheck check, PlannedElements plans,
			RequiredElements required, Music music, MusicDeadlines deadlines, PublicTelling telling, Clock clock) {
		this.competitions = competitions;
		this.entries = entries;
		this.check = check;
		this.plans = plans;
		this.required = required;
		this.music = music;
		this.deadlines = deadlines;
		this.telling = telling;
		this.clock = clock;
	}

	/** Whose link that is. */
	public About about(TeamLinks.Pass pass) {
		EntryView entry = this.entries.entry(new EntryId(pass.entry()));
		EventView event = this.competitions.event(entry.event());
		return new About(this.competitions.competition(event.competition()), event, entry);
	}

	/**
	 * The same, to change something of it.
	 * @throws ConflictException {@code own-team-withdrawn} if it takes part no longer
	 */
	About toChange(TeamLinks.Pass pass) {
		About about = about(pass);
		if (!about.entry().isEntered()) {
			throw new ConflictException("own-team-withdrawn", Sentence.of("managers.withdrawn"));
		}
		return about;
	}

	/** What is missing, what has to be done first at the top. */
	public List<Missing> missing(TeamLinks.Pass pass) {
		About about = about(pass);
		List<Missing> missing = new ArrayList<>();
		if (about.entry().isEntered()) {
			ofPeople(this.check.of(about.entry().id()), missing);
			ofElements(about, missing);
			ofMusic(about, missing);
		}
		return missing.stream().sorted(BY_DEADLINE).toList();
	}

	private void ofPeople(TeamCheck team, List<Missing> missing) {
		Instant until = team.rules().deadline();
		if (!team.roster().present().isEmpty()) {
			team.open().forEach((open) -> add(missing, told(open.finding()), Part.ROSTER, until));
			int undecided = (int) team.roster()
				.present()
				.stream()
				.filter((place) -> !place.skater().consent().isGiven())
				.count();
			if (undecided > 0) {
				add(missing, Sentence.of("managers.missing.consent", undecided), Part.ROSTER, null);
			}
		}
		team.missing().stream().filter((one) -> one.key().startsWith("rosters.missing.")).forEach((one) -> {
			boolean roster = one.key().equals("rosters.missing.roster");
			add(missing, one, roster ? Part.ROSTER : Part.CONTACTS, roster ? until : null);
		});
	}

	/** What a rule says of other teams is not told: they are no business of this one. */
	private static Sentence told(Finding finding) {
		if (finding.rule() == Rule.ONE_TEAM) {
			return Sentence.of("managers.missing.one-team", finding.rule().spoken());
		}
		return (finding.rule() == Rule.OTHER_SKATERS)
				? Sentence.of("managers.missing.other-skaters", finding.rule().spoken()) : finding.sentence();
	}

	/**
	 * Where elements are called a plan is missing whether anything is asked of it or not.
	 */
	private void ofElements(About about, List<Missing> missing) {
		about.takingPlace().forEach((segment) -> ofElements(about, segment, missing));
		this.required.otherwise(List.of(about.event()), List.of(about.entry()))
			.getOrDefault(about.entry().id(), List.of())
			.stream()
			.filter((one) -> !about.event().hasTechnicalPanel() || !one.key().equals(RequiredElements.NOTHING_PLANNED))
			.forEach((one) -> add(missing, one, Part.ELEMENTS, null));
	}

	private void ofElements(About about, SegmentView segment, List<Missing> missing) {
		boolean asked = about.event().hasTechnicalPanel() && this.plans.refusal(segment.id()).isEmpty();
		if (asked && this.plans.of(about.entry().id(), segment.id()).codes().isEmpty()) {
			add(missing, Sentence.of("managers.missing.elements", segment.name()), Part.ELEMENTS, null);
		}
	}

	/** Where nobody handed music in and no deadline is set it is not kept here. */
	private void ofMusic(About about, List<Missing> missing) {
		Instant until = this.deadlines.of(about.competition().id()).closesAt();
		List<MusicView> all = this.music.of(about.entry().id());
		about.takingPlace()
			.stream()
			.filter((segment) -> all.stream().anyMatch((one) -> one.segment().equals(segment.id()) && one.isMissing()))
			.filter((segment) -> until != null || this.music.withMusic(segment.id()).isPresent())
			.forEach((segment) -> add(missing, Sentence.of("managers.missing.music", segment.name()), Part.MUSIC,
					until));
	}

	private void add(List<Missing> missing, Sentence what, Part where, @Nullable Instant until) {
		missing.add(new Missing(what, where, until, until != null && this.clock.instant().isAfter(until)));
	}

	/** What everybody is told of it; empty while the competition is not public. */
	public Optional<PublicTelling.ToldTeam> told(TeamLinks.Pass pass) {
		About about = about(pass);
		try {
			return Optional.of(this.telling.team(this.telling.competition(about.competition().id()), about.entry()));
		}
		catch (NotFoundException ex) {
			return Optional.empty();
		}
	}

	/** Where something is done. */
	public enum Part {

		ROSTER, CONTACTS, ELEMENTS, MUSIC;

		/** The last part of its address. */
		public String path() {
			return name().toLowerCase(Locale.ROOT);
		}

	}

	/** Where a team is entered. */
	public record About(CompetitionView competition, EventView event, EntryView entry) {

		/** The segments of its event that take place, in order. */
		public List<SegmentView> takingPlace() {
			return this.event.segments().stream().filter((one) -> !this.event.isCancelled(one.id())).toList();
		}

	}

	/**
	 * Something that is missing.
	 *
	 * @param until when it has to be there, {@code null} where nobody said
	 * @param late whether that is over
	 */
	public record Missing(Sentence what, Part where, @Nullable Instant until, boolean late) {
	}

}
