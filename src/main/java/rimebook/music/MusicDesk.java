package rimebook.music;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
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
	 * Those in the order first; whoever is in none, such as one entered late, follows.
	 */
	private static Stream<Numbered> starts(@Nullable StartingOrderView order, Map<EntryId, EntryView> teams) {
		Map<EntryId, EntryView> left = new HashMap<>(teams);
		List<Numbered> starts = new ArrayList<>();
		if (order != null) {
			order.starts()
				.forEach((start) -> starts
					.add(new Numbered(start.number(), Objects.requireNonNull(left.remove(start.entry())))));
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
			MusicView.Version current = this.music.current();
			return this.team.isEntered() && current != null && current.here();
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
