package rimebook.competition;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.ElementCode;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** The rule sets of points judging that come with the service, read once at its start. */
@Component
public class RuleSets {

	private static final List<String> SHIPPED = List.of("synchronized-2025-26");

	private final List<PointsRules> all = SHIPPED.stream().map(RuleSets::read).toList();

	RuleSets() {
	}

	/** The same without a service, for a command. */
	public static RuleSets shipped() {
		return new RuleSets();
	}

	/** Return every rule set, the newest first. */
	public List<PointsRules> all() {
		return this.all;
	}

	/**
	 * Return the rule set of that identity.
	 * @throws NotFoundException if there is none
	 */
	public PointsRules ruleSet(String id) {
		return this.all.stream()
			.filter((rules) -> rules.id().equals(id))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("rule-set", id));
	}

	/**
	 * Return the rule set by which an event is judged.
	 * @throws NotFoundException if the event is not judged by points
	 */
	public PointsRules of(EventView event) {
		return ruleSet(choice(event).ruleSet());
	}

	/**
	 * Return everything that the scores and places of a segment depend on.
	 * @throws NotFoundException if the event is not judged by points
	 */
	public SegmentRules of(EventView event, SegmentView segment) {
		return of(event).segment(segment.kind(), choice(event).level());
	}

	/**
	 * Find a code as the event's table of values writes it, whatever letters were typed
	 * small or large.
	 * @return empty if the table has no such code
	 * @throws NotFoundException if the event is not judged by points
	 */
	public Optional<String> codeOf(EventView event, String typed) {
		Set<String> codes = of(event).values().values().keySet();
		return codes.contains(typed) ? Optional.of(typed)
				: codes.stream().filter((code) -> code.equalsIgnoreCase(typed)).findFirst();
	}

	/**
	 * Name in words what a code stands for.
	 * @return the code itself where the event is not judged by points
	 */
	public String nameOf(EventView event, String code) {
		return (event.judging().points() != null) ? of(event).nameOf(code) : code;
	}

	/**
	 * Name in words an element by its sign, whatever its level.
	 * @return the sign itself where the event is not judged by points
	 */
	public String elementNameOf(EventView event, String sign) {
		return (event.judging().points() != null) ? of(event).elementNameOf(sign) : sign;
	}

	/**
	 * The signs of the elements that an event's table of values has, such as {@code I}
	 * and {@code ME}.
	 * @return none where the event is not judged by points
	 */
	public Set<String> elementsOf(EventView event) {
		return (event.judging().points() != null) ? of(event).values()
			.values()
			.keySet()
			.stream()
			.map(RuleSets::elementOf)
			.collect(Collectors.toCollection(TreeSet::new)) : Set.of();
	}

	/**
	 * The sign of the element that a code is about, whatever its level.
	 * @see ElementCode#elementOf(String)
	 */
	public static String elementOf(String code) {
		return ElementCode.elementOf(code);
	}

	/**
	 * List the figures of an event's rule set that were written down from memory, one
	 * sentence each, for whoever acts on them; none where the event is not judged by
	 * points.
	 */
	public List<String> fromMemory(EventView event) {
		return (event.judging().points() != null) ? of(event).toBeChecked() : List.of();
	}

	/** Refuse a rule set that is not known or has no factors for one of the segments. */
	void check(DraftEvent event) {
		DraftEvent.PointsChoice choice = event.judging().points();
		if (choice != null) {
			PointsRules rules = this.all.stream()
				.filter((each) -> each.id().equals(choice.ruleSet()))
				.findFirst()
				.orElseThrow(() -> refused(Sentence.of("competition.rule-set-unknown", choice.ruleSet())));
			event.segments().forEach((segment) -> check(rules, segment.kind(), choice.level()));
		}
	}

	private static void check(PointsRules rules, SegmentKind kind, String level) {
		if (!rules.levels(kind).contains(level)) {
			throw refused(Sentence.of(
					(kind == SegmentKind.SHORT) ? "competition.no-factors.short" : "competition.no-factors.free",
					rules.title(), level, Series.withCommas(rules.levels(kind))));
		}
	}

	private static RuleViolationException refused(Sentence sentence) {
		return new RuleViolationException("rule-set-does-not-fit", "points", sentence);
	}

	private static DraftEvent.PointsChoice choice(EventView event) {
		DraftEvent.PointsChoice choice = event.judging().points();
		if (choice == null) {
			throw new NotFoundException("rule-set-not-found", Sentence.of("competition.not-by-points", event.name()));
		}
		return choice;
	}

	private static PointsRules read(String id) {
		return PointsRules.read(new PointsRules.RuleTexts(text(id, "settings"), text(id, "values"),
				text(id, "components"), text(id, "deductions"), text(id, "elements")));
	}

	private static String text(String id, String table) {
		try {
			return new ClassPathResource("rules/" + id + "/" + table + ".csv")
				.getContentAsString(StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
