package rimebook.rosters;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventCopied;
import rimebook.competition.EventId;
import rimebook.competition.StillOpen;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What each event asks of its rosters, copied from a set or written down figure by
 * figure.
 */
@Service
@Transactional(readOnly = true)
public class EventEligibility {

	private final EventRulesRepository rules;

	private final Competitions competitions;

	private final StillOpen stillOpen;

	private final Acts acts;

	EventEligibility(EventRulesRepository rules, Competitions competitions, StillOpen stillOpen, Acts acts) {
		this.rules = rules;
		this.competitions = competitions;
		this.stillOpen = stillOpen;
		this.acts = acts;
	}

	/**
	 * Write down what an event asks, in place of what it asked; nothing happens where
	 * that is the same.
	 * @throws ConflictException {@code stale-version}; what {@link StillOpen} refuses
	 * @throws rimebook.shared.NotFoundException if there is no such event
	 */
	@Transactional
	public RulesView set(SetRules order, Actor actor) {
		this.competitions.holding(order.event());
		this.stillOpen.require(order.event());
		EventRules rules = this.rules.findById(order.event().value()).orElseGet(() -> new EventRules(order.event()));
		RulesView before = rules.view();
		rules.write(order);
		if (before.isGiven() && rules.view().inWords().equals(before.inWords())) {
			return before;
		}
		RulesView kept = this.rules.saveAndFlush(rules).view();
		this.acts.publish(AuditedChange.of(actor, "eligibility", order.event(), "eligibility.set")
			.from(before.isGiven() ? before.inWords() : "", kept.inWords()));
		return kept;
	}

	/** An event that is made like another asks the same, until the same deadline. */
	@EventListener
	@Transactional
	public void copy(EventCopied copied) {
		RulesView original = of(copied.original());
		if (original.isGiven()) {
			set(new SetRules(copied.copy(), original.copiedFrom(), original.rules(), original.whenFewer(),
					original.deadline(), RulesView.NONE), copied.actor());
		}
	}

	/** What an event asks; nothing where nobody wrote it down. */
	public RulesView of(EventId event) {
		return this.rules.findById(event.value()).map(EventRules::view).orElseGet(() -> RulesView.none(event));
	}

	/** What these events ask, with one question. */
	public Map<EventId, RulesView> of(Collection<EventId> events) {
		List<RulesView> given = this.rules.findAllById(events.stream().map(EventId::value).toList())
			.stream()
			.map(EventRules::view)
			.toList();
		Map<EventId, RulesView> all = events.stream()
			.distinct()
			.collect(Collectors.toMap(Function.identity(), RulesView::none));
		given.forEach((rules) -> all.put(rules.event(), rules));
		return all;
	}

	/**
	 * The order to write down what an event asks.
	 *
	 * @param copiedFrom the set that the figures were copied from; empty for none
	 * @param whenFewer what follows where fewer are on the ice than asked for, up to 300
	 * characters; empty where that is not written down
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record SetRules(EventId event, String copiedFrom, EligibilityRules rules, String whenFewer,
			@Nullable Instant deadline, int version) {

		/**
		 * Half as many again as the largest roster that was read of: only a slip is
		 * refused.
		 */
		private static final int MOST = 40;

		private static final int OLDEST = 120;

		public SetRules {
			copiedFrom = Required.optional("copiedFrom", copiedFrom, 60);
			whenFewer = Required.optional("whenFewer", whenFewer, 300);
			EligibilityRules.Size size = rules.size();
			number("leastOnIce", size.leastOnIce(), 1, MOST);
			number("mostOnIce", size.mostOnIce(), least(size.leastOnIce(), 1), MOST);
			number("mostAlternates", size.mostAlternates(), 0, MOST);
			number("rosterLimit", size.rosterLimit(), least(size.leastOnIce(), 1), MOST);
			EligibilityRules.Ages ages = rules.ages();
			number("youngest", ages.window().youngest(), 1, OLDEST);
			number("oldest", ages.window().oldest(), least(ages.window().youngest(), 1), OLDEST);
			number("othersYoungest", ages.others().youngest(), 1, OLDEST);
			number("othersOldest", ages.others().oldest(), least(ages.others().youngest(), 1), OLDEST);
			number("share", ages.share(), 1, 100);
			number("otherSkaters", rules.sharing().otherSkaters(), 1, 100);
			boolean asksAges = !ages.window().isOpen() || !ages.others().isOpen();
			if (asksAges && ages.cutOff() == null) {
				throw RuleViolationException.ofField("cut-off-missing", "cutOff",
						Sentence.of("rosters.cut-off-missing"));
			}
		}

		private static int least(@Nullable Integer other, int otherwise) {
			return (other != null) ? other : otherwise;
		}

		private static void number(String field, @Nullable Integer value, int least, int most) {
			if (value != null) {
				Required.number(field, value, least, most);
			}
		}

	}

}
