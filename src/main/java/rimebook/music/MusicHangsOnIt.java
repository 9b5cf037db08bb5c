package rimebook.music;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/** A segment for which music was handed in stays. */
@Component
class MusicHangsOnIt implements CancellationGuard {

	private final MusicVersionRepository versions;

	private final OnSiteNoteRepository notes;

	private final Entries entries;

	MusicHangsOnIt(MusicVersionRepository versions, OnSiteNoteRepository notes, Entries entries) {
		this.versions = versions;
		this.notes = notes;
		this.entries = entries;
	}

	@Override
	public Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		return segments.stream()
			.flatMap((segment) -> team(segment).map((team) -> sentence(team, segment)).stream())
			.findFirst();
	}

	private Optional<EntryId> team(SegmentView segment) {
		Set<UUID> one = Set.of(segment.id().value());
		return this.versions.findBySegmentInOrderByNumberDesc(one)
			.stream()
			.map(MusicVersion::entry)
			.findFirst()
			.or(() -> this.notes.findBySegmentInOrderByNumberDesc(one).stream().map(OnSiteNote::entry).findFirst());
	}

	private Sentence sentence(EntryId team, SegmentView segment) {
		return Sentence.of("music.handed-in", this.entries.entry(team).team().name(), segment.name());
	}

}
