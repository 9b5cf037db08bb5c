package rimebook.documents;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;
import rimebook.wording.Sentence;

/**
 * The sheet of a medal ceremony, for the announcer and who hands over: the steps in the
 * order in which they are called, from the third to the first. It shows a published
 * standing and says loudly where that is not signed, or is open again.
 */
@Component
class CeremonySheet implements DocumentSource {

	private static final int STEPS = 3;

	private final Subjects subjects;

	private final PublishedVersions versions;

	private final Standings standings;

	private final Timetables timetables;

	private final TimetableVersions published;

	private final Entries entries;

	CeremonySheet(Subjects subjects, PublishedVersions versions, Standings standings, Timetables timetables,
			TimetableVersions published, Entries entries) {
		this.entries = entries;
		this.subjects = subjects;
		this.versions = versions;
		this.standings = standings;
		this.timetables = timetables;
		this.published = published;
	}

	@Override
	public DocumentKind kind() {
		return DocumentKind.CEREMONY;
	}

	@Override
	public List<DocumentRef> offered(EventView event) {
		return this.standings.latest(event.id())
			.filter((version) -> !Steps.of(version.standing()).isEmpty())
			.map((version) -> DocumentRef.of(kind(), event.id(), version.number()))
			.stream()
			.toList();
	}

	@Override
	public DocumentContent read(DocumentRef ref) {
		ResultVersion version = this.versions.of(ref);
		List<Step> steps = Steps.of(version.standing());
		if (steps.isEmpty()) {
			throw new RuleViolationException("nobody-placed", Sentence.of("documents.nobody-placed"));
		}
		DocumentContent.Subject at = this.subjects.of(ref.event());
		Map<String, String> spoken = this.entries.ofEvent(ref.event())
			.stream()
			.collect(Collectors.toMap((entry) -> entry.id().toString(), (entry) -> entry.team().spokenAs()));
		Ceremony body = new Ceremony(trust(version, at.event()), left(version.standing()),
				version.standing().isByPoints(), steps, held(at.event()), this.timetables.hands(at.event()));
		return this.versions.shown(at, version, body).withFingerprint(Fingerprint.of(body));
	}

	private Trust trust(ResultVersion version, EventView event) {
		if (version.state() == ResultVersion.ResultState.OFFICIAL) {
			return Trust.SIGNED;
		}
		return event.segments().stream().anyMatch((segment) -> isOpenAgain(segment.id(), version)) ? Trust.REOPENED
				: Trust.NOT_SIGNED;
	}

	/** It was signed once, and was not when the event's version was made. */
	private boolean isOpenAgain(SegmentId segment, ResultVersion event) {
		List<ResultVersion.ResultState> states = this.standings.versions(segment)
			.stream()
			.filter((version) -> !version.publishedAt().isAfter(event.publishedAt()))
			.sorted(Comparator.comparingInt(ResultVersion::number))
			.map(ResultVersion::state)
			.toList();
		return states.contains(ResultVersion.ResultState.OFFICIAL)
				&& states.get(states.size() - 1) != ResultVersion.ResultState.OFFICIAL;
	}

	/** How many teams have still to skate. */
	private static int left(Standing standing) {
		return (int) standing.rows().stream().filter(Standing.Row::waits).count();
	}

	private List<Held> held(EventView event) {
		return this.published.latest(event.competition())
			.map((version) -> version.timetable()
				.surfaces()
				.flatMap((ice) -> ice.items()
					.stream()
					.filter((item) -> item.kind() == Block.Kind.CEREMONY && item.isOf(event.id().value()))
					.map((item) -> new Held(item.begins(), ice.surface())))
				.toList())
			.orElseGet(List::of);
	}

	/** How far the standing can be trusted. */
	enum Trust {

		SIGNED, NOT_SIGNED, REOPENED;

		/** Tell whether medals should wait. */
		public boolean isLoud() {
			return this != SIGNED;
		}

	}

	/**
	 * What is laid out.
	 *
	 * @param left how many teams have still to skate
	 * @param steps as they are called
	 * @param held when and where it is planned; empty where it is not
	 * @param hands who hands over, line by line; empty where nobody wrote it
	 */
	record Ceremony(Trust trust, int left, boolean points, List<Step> steps, List<Held> held,
			List<String> hands) implements DocumentContent.NamesPeople {

		@Override
		public Ceremony withoutPeople() {
			return new Ceremony(this.trust, this.left, this.points, this.steps, this.held, List.of());
		}

	}

	/** When and where it is planned. */
	record Held(Instant at, String surface) {
	}

	/**
	 * A step.
	 *
	 * @param teams who stands on it, in the order of the standing; nobody where it stays
	 * empty
	 * @param sharedAbove how many teams share the place because of which it stays empty,
	 * 0 for another reason
	 */
	record Step(int place, List<Team> teams, int sharedAbove) {

		/** Tell whether several teams stand on it. */
		public boolean isShared() {
			return this.teams.size() > 1;
		}

		Step spoken(Map<String, String> names) {
			return new Step(this.place, this.teams.stream().map((team) -> team.spoken(names)).toList(),
					this.sharedAbove);
		}

	}

	/**
	 * @param spoken how the name is said, empty for as it is written
	 * @param total {@code null} where there is none
	 */
	record Team(String entry, String name, String spoken, String club, @Nullable Integer total) {

		static Team of(Standing.Row row) {
			return new Team(row.entry(), row.team(), "", row.club(), row.total());
		}

		Team spoken(Map<String, String> names) {
			return new Team(this.entry, this.name, names.getOrDefault(this.entry, ""), this.club, this.total);
		}

	}

	/** Makes the steps of a standing. */
	private static final class Steps {

		private Steps() {
		}

		/**
		 * From the third to the first. Where teams share a place, as many places behind
		 * it are not awarded (1, 1, 3); where there are fewer teams than steps, there are
		 * fewer steps.
		 */
		static List<Step> of(Standing standing) {
			List<Standing.Row> placed = standing.rows().stream().filter((row) -> row.place() != null).toList();
			List<Step> steps = new ArrayList<>();
			for (int place = STEPS; place >= 1; place--) {
				List<Team> teams = at(placed, place);
				int reached = placed.stream().mapToInt((row) -> Objects.requireNonNull(row.place())).max().orElse(0);
				int above = sharedAbove(placed, place);
				if (!teams.isEmpty() || above > 0 || place < reached) {
					steps.add(new Step(place, teams, teams.isEmpty() ? above : 0));
				}
			}
			return placed.isEmpty() ? List.of() : List.copyOf(steps);
		}

		private static List<Team> at(List<Standing.Row> placed, int place) {
			return placed.stream().filter((row) -> Objects.requireNonNull(row.place()) == place).map(Team::of).toList();
		}

		/** How many share the place above that reaches down to this one. */
		private static int sharedAbove(List<Standing.Row> placed, int place) {
			for (int above = place - 1; above >= 1; above--) {
				int there = at(placed, above).size();
				if (there > 1 && above + there > place) {
					return there;
				}
			}
			return 0;
		}

	}

}
