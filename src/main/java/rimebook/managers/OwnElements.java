package rimebook.managers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.accounts.TeamLinks;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/** What the team of a link means to skate, and the table of values to search in. */
@Service
@Transactional(readOnly = true)
public class OwnElements {

	/** As many as a telephone shows at a glance. */
	private static final int MOST_FOUND = 12;

	private final OwnTeam own;

	private final PlannedElements plans;

	private final RuleSets ruleSets;

	private final RequiredElements required;

	OwnElements(OwnTeam own, PlannedElements plans, RuleSets ruleSets, RequiredElements required) {
		this.required = required;
		this.own = own;
		this.plans = plans;
		this.ruleSets = ruleSets;
	}

	/**
	 * The plan for a segment.
	 * @throws NotFoundException if the team's event has no such segment
	 */
	public Plan of(TeamLinks.Pass pass, SegmentId id, Locale language) {
		OwnTeam.About about = this.own.about(pass);
		SegmentView segment = about.event().segment(id);
		PlannedElements.PlanView plan = this.plans.of(about.entry().id(), id);
		Figures words = new Figures(language);
		List<Element> elements = plan.codes()
			.stream()
			.map((code) -> new Element(code, words.trade(this.ruleSets.nameOf(about.event(), code))))
			.toList();
		Sentence withdrawn = about.entry().isEntered() ? Sentence.NONE : Sentence.of("managers.withdrawn");
		return new Plan(segment, elements, plan.version(),
				withdrawn.isEmpty() ? this.plans.refusal(id).map(OwnElements::told).orElse(Sentence.NONE) : withdrawn,
				about.event().hasTechnicalPanel(), this.required.asked(about.event(), id),
				this.required.against(about.event(), plan));
	}

	/** The crew's reason is said in English alone. */
	private static Sentence told(Sentence refusal) {
		return refusal.key().equals("performances.plans-stay") ? Sentence.of("managers.plans-stay") : refusal;
	}

	/**
	 * Elements whose code begins with what was typed, or whose name has it; none where
	 * there is no table of values.
	 */
	public List<Element> find(TeamLinks.Pass pass, String typed, Locale language) {
		OwnTeam.About about = this.own.about(pass);
		String looked = typed.strip().toLowerCase(Locale.ROOT);
		if (looked.isEmpty() || !about.event().hasTechnicalPanel()) {
			return List.of();
		}
		Figures words = new Figures(language);
		List<String> codes = List.copyOf(this.ruleSets.of(about.event()).values().values().keySet());
		Stream<String> byCode = codes.stream().filter((code) -> code.toLowerCase(Locale.ROOT).startsWith(looked));
		Stream<String> byName = codes.stream()
			.filter((code) -> has(this.ruleSets.nameOf(about.event(), code), looked, words));
		return Stream.concat(byCode, byName)
			.filter((code) -> !code.endsWith("<"))
			.distinct()
			.limit(MOST_FOUND)
			.map((code) -> new Element(code, words.trade(this.ruleSets.nameOf(about.event(), code))))
			.toList();
	}

	private static boolean has(String name, String looked, Figures words) {
		return name.toLowerCase(Locale.ROOT).contains(looked)
				|| words.trade(name).toLowerCase(words.locale()).contains(looked);
	}

	/**
	 * Put a plan in place of the one that was seen.
	 * @throws rimebook.shared.ConflictException {@code own-team-withdrawn}, and as
	 * {@link PlannedElements#plan}
	 */
	@Transactional
	public void plan(TeamLinks.Pass pass, SegmentId segment, String typed, int version, Actor actor) {
		EntryId entry = this.own.toChange(pass).entry().id();
		this.plans.plan(new PlannedElements.PlanElements(entry, segment, typed, version), actor);
	}

	/** Why no plan changes any more; empty while plans do. */
	public Optional<Sentence> refusal(SegmentId segment) {
		return this.plans.refusal(segment);
	}

	/**
	 * What the team means to skate in a segment.
	 *
	 * @param refusal why it changes no longer, empty while it does
	 * @param byTable whether there is a table of values to search in
	 * @param asked what the segment asks of it, a sentence each; empty for nothing
	 * @param otherwise what of it is otherwise; it is kept all the same
	 */
	public record Plan(SegmentView segment, List<Element> elements, int version, Sentence refusal, boolean byTable,
			List<Sentence> asked, List<Sentence> otherwise) {
	}

	/** An element and its code in words. */
	public record Element(String code, String name) {
	}

}
