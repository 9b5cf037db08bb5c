package rimebook.music;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.wording.Sentence;

/**
 * The music of a segment as the music desk needs it: one line a team in the starting
 * order in force, whatever happens on the ice.
 */
@Service
@Transactional(readOnly = true)
public class MusicDesk {

	private final Competitions competitions;

	private final Entries entries;

	private final StartingOrderDraw draw;

	private final Music music;

	private final MusicPlays plays;

	private final MusicSettings settings;

	MusicDesk(Competitions competitions, Entries entries, StartingOrderDraw draw, Music music, MusicPlays plays,
			MusicSettings settings) {
		this.settings = settings;
		this.competitions = competitions;
		this.entries = entries;
		this.draw = draw;
		this.music = music;
		this.plays = plays;
	}

	/** The lines of a segment. */
	public View of(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		SegmentView segment = event.segment(id);
		Map<EntryId, EntryView> teams = this.entries.ofEvent(event.id())
			.stream()
			.collect(Collectors.toMap(EntryView::id, (entry) -> entry));
		Map<EntryId, MusicView> known = this.music.ofSegment(id);
		Map<EntryId, List<MusicPlays.Played>> played = this.plays.ofSegment(id);
		MusicWindow window = MusicWindow.of(segment);
		StartingOrderView order = this.draw.ofSegment(id).orElse(null);
		List<Line> lines = starts(order, teams).map((start) -> {
			MusicView music = known.getOrDefault(start.team().id(),
					new MusicView(start.team().id(), id, List.of(), null));
			return new Line(start.number(), start.team(), music, fit(music, window),
					played.getOrDefault(start.team().id(), List.of()));
		}).toList();
		return new View(event, segment, (order != null) ? order.number() : 0, lines, window.inWords());
	}

	/**
	 * How far the music of each segment of these events is; as many questions, however
	 * many there are.
	 */
	public Map<SegmentId, Count> counts(Collection<EventView> events) {
		Map<EventId, List<EntryView>> teams = this.entries.ofEvents(events.stream().map(EventView::id).toList())
			.stream()
			.filter(EntryView::isEntered)
			.collect(Collectors.groupingBy(EntryView::event));
		Map<SegmentId, List<MusicView>> known = this.music
			.ofSegments(events.stream().flatMap((event) -> event.segments().stream()).map(SegmentView::id).toList())
			.stream()
			.collect(Collectors.groupingBy(MusicView::segment));
		Map<SegmentId, Count> counts = new HashMap<>();
		events.forEach((event) -> event.segments()
			.forEach((segment) -> counts.put(segment.id(),
					Count.of(teams.getOrDefault(event.id(), List.of()), known.getOrDefault(segment.id(), List.of())))));
		return counts;
	}

	/**
	 * Those in the order first; whoever is in none, such as one entered late, follows. A
	 * number whose team is in another event by now is a gap.
	 */
	private static Stream<Numbered> starts(@Nullable StartingOrderView order, Map<EntryId, EntryView> teams) {
		Map<EntryId, EntryView> left = new HashMap<>(teams);
		List<Numbered> starts = new ArrayList<>();
		if (order != null) {
			order.starts()
				.forEach((start) -> Optional.ofNullable(left.remove(start.entry()))
					.ifPresent((team) -> starts.add(new Numbered(start.number(), team))));
		}
		left.values()
			.stream()
			.filter(EntryView::isEntered)
			.sorted(Comparator.comparing((EntryView entry) -> entry.team().name(), String.CASE_INSENSITIVE_ORDER))
			.forEach((entry) -> starts.add(new Numbered(0, entry)));
		return starts.stream();
	}

	private static @Nullable Found fit(MusicView music, MusicWindow window) {
		MusicView.Version current = music.current();
		return (current != null) ? found(window, current) : null;
	}

	/** How long the programme of a segment may be. */
	public Sentence window(SegmentView segment) {
		return MusicWindow.of(segment).inWords();
	}

	/** The largest file that is taken, in bytes. */
	public long mostBytes() {
		return this.settings.most().toBytes();
	}

	/** How a file lies in the window of a segment, in a sentence. */
	public Found found(SegmentView segment, MusicView.Version version) {
		return found(MusicWindow.of(segment), version);
	}

	private static Found found(MusicWindow window, MusicView.Version version) {
		MusicWindow.Fit fit = window.fit(version.file().milliseconds());
		return new Found(fit.inside(), fit.words());
	}

	/** A team and its starting number, 0 for none. */
	private record Numbered(int number, EntryView team) {
	}

	/**
	 * The desk of a segment.
	 *
	 * @param order the number of the starting order in force, 0 before the draw
	 * @param window how long the programme may be
	 */
	public record View(EventView event, SegmentView segment, int order, List<Line> lines, Sentence window) {

		/** How many files there are to be loaded. */
		public int files() {
			return (int) this.lines.stream().filter(Line::isPlayable).count();
		}

		/** Those that take part and have no music. */
		public List<Line> missing() {
			return this.lines.stream().filter(Line::isMissing).toList();
		}

	}

	/**
	 * The music of a segment in figures, of the teams that take part.
	 *
	 * @param files how many files can be played
	 * @param onSite how many teams have none but bring it to the rink
	 * @param missing how many teams have neither
	 */
	public record Count(int files, int onSite, int missing) {

		public static final Count NONE = new Count(0, 0, 0);

		private static Count of(List<EntryView> teams, List<MusicView> known) {
			Set<EntryId> entered = teams.stream().map(EntryView::id).collect(Collectors.toSet());
			List<MusicView> theirs = known.stream().filter((music) -> entered.contains(music.entry())).toList();
			int files = (int) theirs.stream().filter(MusicView::isPlayable).count();
			int there = (int) theirs.stream().filter((music) -> !music.isMissing()).count();
			return new Count(files, there - files, entered.size() - there);
		}

		/** Tell whether music is kept here at all: somebody has some. */
		public boolean isKept() {
			return this.files + this.onSite > 0;
		}

	}

	/**
	 * One line.
	 *
	 * @param number the starting number, 0 for none
	 * @param fit how the file lies in the window, {@code null} without one
	 * @param played the earliest first
	 */
	public record Line(int number, EntryView team, MusicView music, @Nullable Found fit,
			List<MusicPlays.Played> played) {

		/** Tell whether there is a file to be loaded, for a team that takes part. */
		public boolean isPlayable() {
			return this.team.isEntered() && this.music.isPlayable();
		}

		/** Tell whether a team that takes part has no music. */
		public boolean isMissing() {
			return this.team.isEntered() && this.music.isMissing();
		}

		/** Tell whether the file is as long as the programme may be; true without one. */
		public boolean isInside() {
			return this.fit == null || this.fit.inside();
		}

		/** How long the file is and how that lies in the window. */
		public Sentence length() {
			return (this.fit != null) ? this.fit.words() : Sentence.NONE;
		}

		/** The file that counts, where {@link #isPlayable} says that there is one. */
		public MusicView.Version version() {
			return Objects.requireNonNull(this.music.current(), "version");
		}

		/** A name for the file that says when it is played and by whom. */
		public String fileName() {
			return "%02d %s.%s".formatted(this.number, FileName.ofTeam(this.team.team().name()),
					version().file().kind().ending());
		}

	}

	/** How a file lies in the window of a segment. */
	public record Found(boolean inside, Sentence words) {
	}

}
