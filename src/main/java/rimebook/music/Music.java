package rimebook.music;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.core.io.InputStreamSource;
import org.springframework.core.io.Resource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The music of each team for each segment: handed in as files, of which the newest
 * counts, or noted as brought to the rink.
 */
@Service
@Transactional(readOnly = true)
public class Music {

	private final MusicFiles files;

	private final MusicVersionRepository versions;

	private final OnSiteNoteRepository notes;

	private final MusicDeadlines deadlines;

	private final Entries entries;

	private final Competitions competitions;

	private final StillOpen stillOpen;

	private final Acts acts;

	Music(MusicFiles files, MusicVersionRepository versions, OnSiteNoteRepository notes, MusicDeadlines deadlines,
			Entries entries, Competitions competitions, StillOpen stillOpen, Acts acts) {
		this.files = files;
		this.versions = versions;
		this.notes = notes;
		this.deadlines = deadlines;
		this.entries = entries;
		this.competitions = competitions;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Hand a file in. It becomes the version that counts; those before stay. The file is
	 * read from its beginning as often as it takes, and never held as a whole.
	 * @throws RuleViolationException {@code music-missing}, {@code music-too-large},
	 * {@code music-unknown}, {@code music-broken}, or {@code late-reason-missing} after
	 * the deadline
	 * @throws ConflictException what {@link StillOpen} refuses
	 * @throws NotFoundException if there is no such entry, or no such segment in its
	 * event
	 * @throws UncheckedIOException if the file cannot be read to its end; then nothing is
	 * left of it
	 */
	@Transactional
	public MusicView.Version handIn(HandIn order, Actor actor) {
		EventView event = this.competitions.event(this.entries.entry(order.entry()).event());
		SegmentView segment = event.segment(order.segment());
		try {
			// Before anybody has to wait: reading takes its time.
			Recognition.Recognised found = this.files.look(order.file(), order.length());
			MusicStore.Arrived arrived = this.files.write(order.file(), order.length());
			try {
				return kept(order, event, segment, new MusicView.Version.File(found.kind(), order.name(),
						arrived.bytes(), found.milliseconds(), arrived.sha256()), arrived, actor)
					.view(true);
			}
			finally {
				this.files.drop(arrived);
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private MusicVersion kept(HandIn order, EventView event, SegmentView segment, MusicView.Version.File file,
			MusicStore.Arrived arrived, Actor actor) throws IOException {
		this.competitions.holding(event.id());
		this.stillOpen.require(segment.id());
		String late = this.deadlines.admit(event.competition(), order.lateReason());
		List<MusicVersion> before = this.versions.findByEntryOrderByNumberDesc(order.entry().value())
			.stream()
			.filter((version) -> version.segment().equals(segment.id()))
			.toList();
		int number = before.isEmpty() ? 1 : before.get(0).number() + 1;
		MusicVersion version = this.versions.saveAndFlush(new MusicVersion(this.acts.nextId(), order.entry(),
				segment.id(), file, new MusicVersion.Made(number, late, actor, this.acts.now())));
		this.files.keep(arrived);
		this.acts.publish(AuditedChange.of(actor, "music", order.entry(), "music.handed-in")
			.from(before.isEmpty() ? "" : before.get(0).inWords(segment.name()), version.inWords(segment.name()))
			.because(late));
		return version;
	}

	/**
	 * Note that a team brings its music to the rink, or take that back; nothing happens
	 * where it stands so.
	 * @throws ConflictException what {@link StillOpen} refuses
	 * @throws NotFoundException if there is no such entry, or no such segment in its
	 * event
	 */
	@Transactional
	public void onSite(EntryId entry, SegmentId segment, boolean onSite, Actor actor) {
		EventView event = this.competitions.event(this.entries.entry(entry).event());
		String name = event.segment(segment).name();
		this.competitions.holding(event.id());
		this.stillOpen.require(segment);
		OnSiteNote before = this.notes.findFirstByEntryAndSegmentOrderByNumberDesc(entry.value(), segment.value())
			.orElse(null);
		boolean was = before != null && before.isOnSite();
		if (was == onSite) {
			return;
		}
		int number = (before != null) ? before.number() + 1 : 1;
		this.notes.saveAndFlush(new OnSiteNote(this.acts.nextId(), entry, segment, new OnSiteNote.Noted(number, onSite),
				actor, this.acts.now()));
		this.acts
			.publish(AuditedChange.of(actor, "music", entry, onSite ? "music.noted-on-site" : "music.noted-not-on-site")
				.from(OnSiteNote.inWords(name, was), OnSiteNote.inWords(name, onSite)));
	}

	/** The music of a team, for each segment of its event in order. */
	public List<MusicView> of(EntryId entry) {
		EventView event = this.competitions.event(this.entries.entry(entry).event());
		List<MusicVersion> found = this.versions.findByEntryOrderByNumberDesc(entry.value());
		List<OnSiteNote> noted = this.notes.findByEntryOrderByNumberDesc(entry.value());
		Set<String> here = this.files.here(found);
		return event.segments().stream().map((segment) -> view(entry, segment.id(), found, noted, here)).toList();
	}

	/**
	 * The music of the teams of a segment, by team; without those of whom none is known.
	 */
	public Map<EntryId, MusicView> ofSegment(SegmentId segment) {
		return ofSegments(Set.of(segment)).stream().collect(Collectors.toMap(MusicView::entry, (music) -> music));
	}

	/**
	 * The teams that have music for a segment, as a file or on site; empty where nobody
	 * has any, since then music is not kept here and nobody lacks it.
	 */
	public Optional<Set<EntryId>> withMusic(SegmentId segment) {
		Set<EntryId> have = ofSegments(Set.of(segment)).stream()
			.filter((music) -> !music.isMissing())
			.map(MusicView::entry)
			.collect(Collectors.toSet());
		return have.isEmpty() ? Optional.empty() : Optional.of(have);
	}

	/** What is known of the music for these segments; three questions, however many. */
	public List<MusicView> ofSegments(Collection<SegmentId> segments) {
		List<MusicVersion> found = this.versions
			.findBySegmentInOrderByNumberDesc(segments.stream().map(SegmentId::value).toList());
		List<OnSiteNote> noted = this.notes
			.findBySegmentInOrderByNumberDesc(segments.stream().map(SegmentId::value).toList());
		Set<String> here = this.files.here(found);
		Map<Place, List<MusicVersion>> files = found.stream()
			.collect(Collectors.groupingBy((version) -> new Place(version.entry(), version.segment())));
		Map<Place, List<OnSiteNote>> words = noted.stream()
			.collect(Collectors.groupingBy((note) -> new Place(note.entry(), note.segment())));
		Set<Place> places = new LinkedHashSet<>(files.keySet());
		places.addAll(words.keySet());
		List<MusicView> views = new ArrayList<>();
		places.forEach((place) -> views.add(view(place.entry(), place.segment(), files.getOrDefault(place, List.of()),
				words.getOrDefault(place, List.of()), here)));
		return views;
	}

	private static MusicView view(EntryId entry, SegmentId segment, List<MusicVersion> found, List<OnSiteNote> noted,
			Set<String> here) {
		return new MusicView(entry, segment,
				found.stream()
					.filter((version) -> version.segment().equals(segment))
					.map((version) -> version.view(here.contains(version.digest())))
					.toList(),
				noted.stream()
					.filter((note) -> note.segment().equals(segment))
					.findFirst()
					.map(OnSiteNote::view)
					.orElse(null));
	}

	/**
	 * One version with its bytes.
	 * @throws NotFoundException if there is none, or its bytes are not here
	 */
	public Content content(MusicView.VersionId id) {
		MusicVersion version = this.versions.findById(id.value()).orElseThrow(() -> NotFoundException.of("music", id));
		if (this.files.here(List.of(version)).isEmpty()) {
			throw NotFoundException.of("music", id);
		}
		return new Content(version.entry(), version.segment(), version.view(true), this.files.bytes(version));
	}

	/** A team in a segment. */
	private record Place(EntryId entry, SegmentId segment) {
	}

	/** A version with its bytes. */
	public record Content(EntryId entry, SegmentId segment, MusicView.Version version, Resource bytes) {

		/** The answer to a player that asks for it. */
		public ResponseEntity<Resource> answer() {
			MusicView.Version.File file = this.version.file();
			return Played.answer(file.kind(), file.name(), file.sha256(), this.bytes);
		}

	}

	/**
	 * A file that is handed in.
	 *
	 * @param file gives its bytes from the beginning each time it is asked
	 * @param length in bytes
	 * @param name what it is called where it came from; only its last part is kept, and
	 * nothing depends on it
	 * @param lateReason why it is taken after the deadline, up to 500 characters; dropped
	 * in time
	 */
	public record HandIn(EntryId entry, SegmentId segment, InputStreamSource file, long length, String name,
			String lateReason) {

		public HandIn {
			Objects.requireNonNull(file, "file");
			name = FileName.sent(name);
		}

	}

}
