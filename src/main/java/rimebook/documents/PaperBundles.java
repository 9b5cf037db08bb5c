package rimebook.documents;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

import rimebook.archive.NoRoom;
import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Everything of a competition on paper as one file, which is made in the background, one
 * document after the other. How far it has come is in the database: any node can say it,
 * and one that was not finished is never taken for whole.
 */
@Service
public class PaperBundles {

	private static final Logger LOG = LoggerFactory.getLogger(PaperBundles.class);

	private static final Duration KEPT = Duration.ofDays(1);

	private final Competitions competitions;

	private final Documents documents;

	private final BundleStore store;

	private final BundleThread thread;

	private final Acts acts;

	PaperBundles(Competitions competitions, Documents documents, BundleStore store, BundleThread thread, Acts acts) {
		this.competitions = competitions;
		this.documents = documents;
		this.store = store;
		this.thread = thread;
		this.acts = acts;
	}

	/**
	 * Have one made. While one of the competition is being made on the same paper and in
	 * the same language, it is that one.
	 * @return its identity
	 */
	public UUID ask(CompetitionId competition, PaperSize paper, Locale language, Actor actor) {
		Instant now = this.acts.now();
		this.competitions.competition(competition);
		BundleView.Order order = new BundleView.Order(competition, paper, language, actor.name(), now);
		return this.store.newest(competition)
			.filter((newest) -> !newest.isReady() && !newest.isStopped(now))
			.filter((newest) -> newest.order().paper() == paper && newest.order().language().equals(language))
			.map(BundleView::id)
			.orElseGet(() -> begin(order));
	}

	private UUID begin(BundleView.Order order) {
		UUID id = this.acts.nextId();
		this.store.begin(id, order, order.at().minus(KEPT));
		this.thread.run(() -> make(id, order));
		return id;
	}

	private void make(UUID id, BundleView.Order order) {
		try {
			List<Sheet> sheets = this.competitions.events(order.competition())
				.stream()
				.flatMap((event) -> this.documents.offered(event).stream().map((ref) -> new Sheet(event, ref)))
				.toList();
			this.store.count(id, sheets.size(), this.acts.now());
			boolean wanted = true;
			for (int i = 0; wanted && i < sheets.size(); i++) {
				wanted = this.store.add(id, i + 1, sheets.get(i).print(this.documents, order), this.acts.now());
			}
		}
		catch (RuntimeException ex) {
			LOG.warn("The documents of competition {} could not be made", order.competition(), ex);
			fail(id, NoRoom.isWhy(ex) ? BundleView.Trouble.DISK_FULL : BundleView.Trouble.FAILED);
		}
	}

	/** Where not even that can be written, it is told by the silence that follows. */
	private void fail(UUID id, BundleView.Trouble trouble) {
		try {
			this.store.fail(id, trouble);
		}
		catch (RuntimeException ex) {
			LOG.warn("Nor could it be written down that bundle {} failed", id, ex);
		}
	}

	/**
	 * How far it has come.
	 * @throws NotFoundException if it is not kept any more
	 */
	public BundleView bundle(UUID id) {
		return this.store.find(id).orElseThrow(() -> NotFoundException.of("document", id));
	}

	/**
	 * The same for whoever wants to take it.
	 * @throws NotFoundException if it is not kept any more
	 * @throws ConflictException {@code bundle-not-ready} if it is not whole
	 */
	public BundleView whole(UUID id) {
		BundleView bundle = bundle(id);
		if (!bundle.isReady()) {
			throw new ConflictException("bundle-not-ready", Sentence.of("documents.bundle-not-ready"));
		}
		return bundle;
	}

	/** The newest of a competition. */
	public Optional<BundleView> newest(CompetitionId competition) {
		return this.store.newest(competition);
	}

	/**
	 * Write a {@link #whole} one as a zip file with a folder for each event. What is
	 * written has an end only if all of it is there, so that half of it opens nowhere.
	 * @throws IOException if it cannot be written
	 * @throws NotFoundException if another one took its place meanwhile
	 */
	public void write(BundleView bundle, OutputStream out) throws IOException {
		this.store.write(bundle, out);
	}

	private record Sheet(EventView event, DocumentRef ref) {

		Documents.Printed print(Documents documents, BundleView.Order order) {
			Documents.Printed printed = documents.print(this.ref, order.paper(), order.language());
			return new Documents.Printed(this.event.slug() + "/" + printed.name(), printed.bytes());
		}

	}

}
