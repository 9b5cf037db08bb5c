package rimebook.music;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/**
 * Deletes the music of a competition once it is no longer needed. Which files there were,
 * with their digests, stays, so the record stays whole; the sound is gone for good,
 * copies at the second place included, once that is reached.
 */
@Service
public class MusicRetention {

	private final MusicStore store;

	private final MusicVersionRepository versions;

	private final MusicDeletionRepository deletions;

	private final Competitions competitions;

	private final Acts acts;

	MusicRetention(MusicStore store, MusicVersionRepository versions, MusicDeletionRepository deletions,
			Competitions competitions, Acts acts) {
		this.store = store;
		this.versions = versions;
		this.deletions = deletions;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Delete it. What another competition uses, too, stays for that.
	 * @return what was deleted; nothing where nothing was here any more
	 */
	@Transactional
	public Deleted delete(CompetitionId competition, Actor actor) {
		List<EventView> events = this.competitions.events(competition);
		if (events.isEmpty()) {
			return Deleted.NOTHING;
		}
		this.competitions.holding(events.get(0).id());
		Map<String, Long> here = here(events);
		Deleted deleted = Deleted.of(here);
		if (deleted.files() > 0) {
			this.deletions
				.saveAndFlush(new MusicDeletion(this.acts.nextId(), competition, deleted, actor, this.acts.now()));
			this.acts.publish(
					AuditedChange.of(actor, "music", competition, "music.deleted").from(deleted.inWords(), "deleted"));
			delete(here.keySet());
		}
		return deleted;
	}

	/** What would be deleted now. */
	@Transactional(readOnly = true)
	public Deleted there(CompetitionId competition) {
		return Deleted.of(here(this.competitions.events(competition)));
	}

	/** The bytes of each file that is here and that nobody else uses, by digest. */
	private Map<String, Long> here(List<EventView> events) {
		Set<UUID> segments = events.stream()
			.flatMap((event) -> event.segments().stream())
			.map((segment) -> segment.id().value())
			.collect(Collectors.toSet());
		Map<String, Long> lengths = this.versions.findBySegmentInOrderByNumberDesc(segments)
			.stream()
			.collect(Collectors.toMap(MusicVersion::digest, MusicVersion::bytes, (one, same) -> one));
		if (lengths.isEmpty()) {
			return lengths;
		}
		Set<String> ours = new HashSet<>(this.store.here(lengths.keySet()));
		this.versions.alsoElsewhere(lengths.keySet(), segments).forEach(ours::remove);
		lengths.keySet().retainAll(ours);
		return lengths;
	}

	/** Rows go with the transaction; files once nothing can take it back any more. */
	private void delete(Set<String> digests) {
		if (this.store.isOfTheDatabase()) {
			digests.forEach(this.store::delete);
			return;
		}
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
			@Override
			public void afterCommit() {
				digests.forEach(MusicRetention.this.store::delete);
			}
		});
	}

	/**
	 * What was deleted.
	 *
	 * @param files how many files; the same file counts once
	 * @param bytes how many bytes in all
	 */
	public record Deleted(int files, long bytes) {

		static final Deleted NOTHING = new Deleted(0, 0);

		static Deleted of(Map<String, Long> lengths) {
			return new Deleted(lengths.size(), lengths.values().stream().mapToLong(Long::longValue).sum());
		}

		/** The same in megabytes, rounded up. */
		public long megabytes() {
			return (this.bytes + (1 << 20) - 1) >> 20;
		}

		/** As on the record. */
		String inWords() {
			return this.files + " files, " + this.bytes + " bytes";
		}

	}

}
