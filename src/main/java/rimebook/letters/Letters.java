package rimebook.letters;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.HouseAddress;
import rimebook.pages.PdfPage;
import rimebook.pages.QrPicture;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/**
 * Writes letters to teams. Whoever sends them has seen every one of them before: what
 * became different since is not sent. Letters by mail are put into the queue; those on
 * paper are kept the same way, to be laid out as often as they are printed.
 */
@Service
@Transactional(readOnly = true)
public class Letters {

	private final LetterDrafts drafts;

	private final LetterStore store;

	private final Carrier carrier;

	private final PersonalLinks links;

	private final Competitions competitions;

	private final PdfPage paper;

	private final Acts acts;

	Letters(LetterDrafts drafts, LetterStore store, Carrier carrier, PersonalLinks links, Competitions competitions,
			PdfPage paper, Acts acts) {
		this.drafts = drafts;
		this.store = store;
		this.carrier = carrier;
		this.links = links;
		this.competitions = competitions;
		this.paper = paper;
		this.acts = acts;
	}

	/** Tell whether letters can go by mail: a server is set. */
	public boolean canMail() {
		return this.carrier.isThere();
	}

	/**
	 * To whom letters of a kind may go, by event and team.
	 * @throws NotFoundException if there is no such competition
	 */
	public List<Recipient> recipients(CompetitionId competition, LetterKind kind) {
		return this.drafts.recipients(competition, kind)
			.stream()
			.map((one) -> new Recipient(one.entry(), one.event().name(), one.to(), one.language()))
			.toList();
	}

	/**
	 * The letters as they would go now.
	 * @throws RuleViolationException {@code letters-nobody} where no team is chosen;
	 * {@code letter-unwritten} for a free letter that nobody wrote;
	 * {@code competition-over} where personal links are wanted and would open nothing
	 */
	public Preview preview(Order order, Actor actor) {
		if (order.teams().isEmpty()) {
			throw RuleViolationException.ofField("letters-nobody", "teams", Sentence.of("letters.nobody"));
		}
		List<Draft> drafts = this.drafts.write(order.competition(), order.kind(), order.teams(), actor);
		List<Draft> renewed = renewed(order.competition(), drafts);
		return new Preview(drafts, renewed, this.links.base(),
				Draft.digest(drafts, this.store.sendings(order.competition()), renewed));
	}

	/** Those whose team has a link already, which theirs would void. */
	private List<Draft> renewed(CompetitionId competition, List<Draft> drafts) {
		if (drafts.stream().noneMatch(Draft::isLinked)) {
			return List.of();
		}
		this.links.require(competition);
		Set<EntryId> open = this.links.open(competition);
		return drafts.stream()
			.filter((draft) -> draft.told() && draft.isLinked() && open.contains(draft.entry().id()))
			.toList();
	}

	/**
	 * Send what can go by mail.
	 * @param seen what {@link Preview#seen} said of what was looked at
	 * @return the sending
	 * @throws ConflictException {@code stale-version} if something became different;
	 * {@code letters-no-server} where no server is set
	 * @throws RuleViolationException {@code letters-none} if there is no letter that can
	 * go
	 */
	@Transactional
	public UUID mail(Order order, String seen, Actor actor) {
		if (!this.carrier.isThere()) {
			throw new ConflictException("letters-no-server", Sentence.of("letters.no-server"));
		}
		return keep(order, SendingView.Way.MAIL, Draft.mailed(looked(order, seen, actor)), actor);
	}

	/**
	 * Keep all of them to be printed, whether or not mail can reach them.
	 * @param seen what {@link Preview#seen} said of what was looked at
	 * @return the sending
	 * @throws ConflictException {@code stale-version} if something became different
	 * @throws RuleViolationException {@code letters-none} if there is nothing to tell
	 */
	@Transactional
	public UUID print(Order order, String seen, Actor actor) {
		List<Draft> letters = Draft.printed(looked(order, seen, actor));
		UUID sending = keep(order, SendingView.Way.PAPER, letters, actor);
		List<EntryId> linked = letters.stream().filter(Draft::isLinked).map((draft) -> draft.entry().id()).toList();
		if (!linked.isEmpty()) {
			this.links.give(order.competition(), linked, actor);
		}
		return sending;
	}

	private List<Draft> looked(Order order, String seen, Actor actor) {
		this.competitions.holding(order.competition());
		Preview now = preview(order, actor);
		if (!now.seen().equals(seen)) {
			throw ConflictException.stale("letters");
		}
		return now.drafts();
	}

	private UUID keep(Order order, SendingView.Way way, List<Draft> letters, Actor actor) {
		if (letters.isEmpty()) {
			throw new RuleViolationException("letters-none", Sentence.of("letters.none"));
		}
		SendingView sending = new SendingView(this.acts.nextId(), order.competition(), order.kind(), way,
				new SendingView.Made(letters.size(), actor.name(), this.acts.now()), Map.of());
		this.store.add(sending);
		letters.forEach(
				(letter) -> this.store.add(this.acts.nextId(), sending, new LetterStore.Written(letter.entry().id(),
						letter.to(), letter.language(), letter.content(), letter.linkAt(), null)));
		this.acts.publish(AuditedChange
			.of(actor, "letters", order.competition(),
					(way == SendingView.Way.MAIL) ? "letters.mailed" : "letters.printed")
			.to(order.kind().inWords(letters.size())));
		return sending.id();
	}

	/**
	 * Make links for letters on paper whose own is shown no longer; those are void.
	 * @return how many
	 * @throws NotFoundException if there is no such sending
	 * @throws RuleViolationException {@code competition-over}
	 */
	@Transactional
	public int linkAgain(UUID id, Actor actor) {
		SendingView sending = this.store.sending(id).orElseThrow(() -> NotFoundException.of("letter", id));
		if (sending.way() != SendingView.Way.PAPER) {
			throw NotFoundException.of("letter", id);
		}
		return this.links.give(sending.competition(),
				this.store.ofSending(id).stream().filter(LetterView::isLinked).map(LetterView::entry).toList(), actor);
	}

	/** What became of the link that a letter took along. */
	public PersonalLinks.Fate fate(CompetitionId competition, LetterView letter) {
		return this.links.fate(competition, letter.entry(), letter.id());
	}

	/**
	 * How many letters on paper are to have a link, and of how many it can be laid out.
	 */
	public Shown shown(SendingView sending, List<LetterView> letters) {
		List<EntryId> linked = letters.stream().filter(LetterView::isLinked).map(LetterView::entry).toList();
		if (sending.way() != SendingView.Way.PAPER || linked.isEmpty()) {
			return new Shown(0, 0);
		}
		Set<EntryId> shown = this.links.shown(sending.competition()).keySet();
		return new Shown(linked.size(), (int) linked.stream().filter(shown::contains).count());
	}

	/**
	 * Lay out the letters of a sending, mailed ones, too. On those that were to be
	 * printed a link stands as long as it is shown; of mailed ones none is known here.
	 * @throws NotFoundException if there is no such sending, or its letters were emptied
	 */
	public byte[] sheets(UUID id) {
		SendingView sending = this.store.sending(id).orElseThrow(() -> NotFoundException.of("letter", id));
		List<LetterView> letters = this.store.ofSending(id).stream().filter((letter) -> !letter.isEmptied()).toList();
		if (letters.isEmpty()) {
			throw NotFoundException.of("letter", id);
		}
		CompetitionView competition = this.competitions.competition(sending.competition());
		List<Sheet> sheets = new ArrayList<>();
		boolean linked = sending.way() == SendingView.Way.PAPER && letters.stream().anyMatch(LetterView::isLinked);
		Map<EntryId, String> links = linked ? this.links.shown(sending.competition()) : Map.of();
		letters.forEach(
				(letter) -> sheets.add(Sheet.of(letter, links.get(letter.entry()), competition, sending.made().at())));
		return this.paper.of("letters/sheets-pdf", Locale.ENGLISH,
				Map.of("competition", competition, "sheets", sheets, "size", "A4"), sending.made().at());
	}

	/**
	 * To whom letters of a kind are written.
	 *
	 * @param teams those that were chosen
	 */
	public record Order(CompetitionId competition, LetterKind kind, Set<EntryId> teams) {

		public Order {
			teams = Set.copyOf(teams);
		}

	}

	/**
	 * Links of letters on paper.
	 *
	 * @param wanted how many letters have a place for one
	 * @param shown how many of these are shown still
	 */
	public record Shown(int wanted, int shown) {

		/** Tell whether some can be laid out no longer. */
		public boolean isGone() {
			return this.shown < this.wanted;
		}

	}

	/**
	 * Letters as they would go now.
	 *
	 * @param renewed those whose team has a personal link already, which theirs voids
	 * @param base how the address of a personal link begins
	 * @param seen names them: give it back when they are sent
	 */
	public record Preview(List<Draft> drafts, List<Draft> renewed, String base, String seen) {

		/** Tell whether any of them takes a personal link along. */
		public boolean isLinked() {
			return this.drafts.stream().anyMatch((draft) -> draft.told() && draft.isLinked());
		}

		/** Tell whether nobody elsewhere could open such a link. */
		public boolean isLocal() {
			return HouseAddress.of(this.base).isLocal();
		}

		/** Those of teams that take no part, so that they may have no link. */
		public List<Draft> shutOut() {
			return this.drafts.stream().filter(Draft::isShutOut).toList();
		}

		/** How many can go by mail. */
		public int mailed() {
			return Draft.mailed(this.drafts).size();
		}

		/** How many can be printed. */
		public int printed() {
			return Draft.printed(this.drafts).size();
		}

		/** Those of which there is nothing to tell. */
		public List<Draft> untold() {
			return this.drafts.stream().filter((draft) -> !draft.told() && !draft.isShutOut()).toList();
		}

		/** Those which can be printed and not be mailed. */
		public List<Draft> withoutMail() {
			return this.drafts.stream().filter((draft) -> draft.told() && !draft.to().hasMail()).toList();
		}

	}

	/**
	 * A team that may be written to.
	 *
	 * @param event what its event is called
	 */
	public record Recipient(EntryView entry, String event, Addressees.Addressee to, Locale language) {
	}

	/**
	 * A letter on paper, with what is the same on all of one language.
	 *
	 * @param content with the link, where it is shown
	 * @param drawing the link to be scanned, as a picture; empty for none
	 */
	record Sheet(LetterView letter, Draft.Content content, String drawing, String head, String day) {

		/** What the drawing is, for those who do not see it. */
		public String scan() {
			return Sentence.of("letters.personal-link-drawn").in(this.letter.language());
		}

		static Sheet of(LetterView letter, @Nullable String link, CompetitionView competition, Instant made) {
			Figures figures = new Figures(letter.language());
			String head = competition.name() + ", " + competition.facts().place() + ", "
					+ figures.days(competition.facts().firstDay(), competition.facts().lastDay());
			String day = figures.days(made.atZone(competition.zone()).toLocalDate(),
					made.atZone(competition.zone()).toLocalDate());
			Integer at = letter.linkAt();
			if (link == null || at == null) {
				return new Sheet(letter, letter.content(), "", head, day);
			}
			Draft.Content content = new Draft.Content(letter.content().subject(),
					LinkedLetters.with(letter.content().body(), at, link));
			return new Sheet(letter, content, QrPicture.of(link), head, day);
		}

	}

}
