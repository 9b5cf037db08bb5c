package rimebook.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Layout;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.PlanRules;
import rimebook.timetable.plan.Programme;
import rimebook.timetable.plan.Sheet;
import rimebook.wording.Sentence;

/**
 * The plan of a competition's days, as referee and secretary make it. Every act is a
 * further state of the plan; the last one is taken back by the state before it, which is
 * a further state again. Nobody but the crew sees any of it until it is published
 * ({@link TimetableVersions}). Every act is refused with {@code stale-version} where
 * somebody else changed the plan since, and with {@code timetable-final} once the
 * competition is final.
 */
@Service
@Transactional(readOnly = true)
public class Timetables {

	private static final String SUBJECT = "timetable";

	/** What one surface is called until somebody names it. */
	private static final String SURFACE = "Main ice";

	private static final int MOST_BLOCKS = 400;

	private final PlanRowRepository rows;

	private final PlanText text;

	private final Competitions competitions;

	private final ProgrammeReader programmes;

	private final Acts acts;

	Timetables(PlanRowRepository rows, PlanText text, Competitions competitions, ProgrammeReader programmes,
			Acts acts) {
		this.rows = rows;
		this.text = text;
		this.competitions = competitions;
		this.programmes = programmes;
		this.acts = acts;
	}

	/**
	 * The plan as it stands; its days with nothing on them before anything was planned.
	 */
	public PlanView plan(CompetitionId id) {
		CompetitionView competition = this.competitions.competition(id);
		return this.rows.findFirstByCompetitionOrderByNumberDesc(id.value())
			.map((row) -> view(competition, row.number(), row.act(), this.text.plan(row.body())))
			.orElseGet(() -> view(competition, 0, null, FirstPlan.empty(competition.facts(), SURFACE)));
	}

	private PlanView view(CompetitionView competition, int number, PlanView.@Nullable Act act, Plan plan) {
		Programme programme = this.programmes.read(competition);
		return new PlanView(competition.id(), number, act, plan, programme, Layout.of(plan, programme));
	}

	/**
	 * A block of the plan as it stands.
	 * @throws NotFoundException if somebody removed it
	 */
	public Block block(CompetitionId id, UUID block) {
		return found(plan(id), block);
	}

	/**
	 * Who hands over what at the ceremonies of an event, line by line; empty where nobody
	 * wrote it.
	 */
	public List<String> hands(EventView event) {
		Set<UUID> segments = event.segments()
			.stream()
			.map((segment) -> segment.id().value())
			.collect(Collectors.toSet());
		return this.rows.findFirstByCompetitionOrderByNumberDesc(event.competition().value())
			.map((row) -> this.text.plan(row.body()).blocks())
			.orElseGet(List::of)
			.stream()
			.filter((block) -> block.segment() != null && segments.contains(block.segment()))
			.flatMap((block) -> block.hands().lines())
			.map(String::strip)
			.filter((line) -> !line.isEmpty())
			.toList();
	}

	/**
	 * What was done since somebody looked at a plan, oldest first.
	 * @param seen the number of the plan that they have before them
	 */
	public List<PlanView.Step> since(CompetitionId id, int seen) {
		CompetitionView competition = this.competitions.competition(id);
		Programme programme = this.programmes.read(competition);
		List<PlanView.Step> steps = new ArrayList<>();
		Plan before = state(id, Math.max(0, seen));
		for (PlanRow row : this.rows.findByCompetitionAndNumberGreaterThanOrderByNumber(id.value(),
				Math.max(0, seen))) {
			Plan after = this.text.plan(row.body());
			steps.add(new PlanView.Step(row.act(), PlanSteps.between(before, after, programme)));
			before = after;
		}
		return steps;
	}

	/**
	 * Make a first plan from what the competition has.
	 * @throws ConflictException {@code timetable-not-empty} unless the plan has no block
	 */
	@Transactional
	public PlanView fill(CompetitionId id, int seen, Actor actor) {
		PlanView before = hold(id, seen);
		if (!before.plan().isEmpty()) {
			throw new ConflictException("timetable-not-empty", Sentence.of("timetable.not-empty"));
		}
		Plan filled = FirstPlan.of(before.programme(), before.plan(), this.acts::nextId);
		return keep(before, filled, "timetable.filled", actor, (line) -> line.to(PlanWords.summary(filled)));
	}

	/**
	 * Put a block into the plan.
	 * @param position before which block of its sheet it stands, from 0; a large number
	 * for the end
	 * @throws RuleViolationException naming what does not fit
	 */
	@Transactional
	public PlanView add(CompetitionId id, int seen, BlockDraft draft, int position, Actor actor) {
		PlanView before = hold(id, seen);
		if (before.plan().blocks().size() >= MOST_BLOCKS) {
			throw new RuleViolationException("timetable-full", Sentence.of("timetable.full", MOST_BLOCKS));
		}
		Block block = draft.block(this.acts.nextId(), before);
		Plan after = before.plan().with(block, position);
		return keep(before, after, "timetable.block-added", actor, (line) -> line.to(words(before, after, block.id())));
	}

	/**
	 * Change a block; it stays where it is unless it goes to another sheet, then it is
	 * the last there.
	 * @throws NotFoundException if somebody removed it
	 */
	@Transactional
	public PlanView change(CompetitionId id, int seen, UUID block, BlockDraft draft, Actor actor) {
		PlanView before = hold(id, seen);
		found(before, block);
		Plan after = before.plan().changed(draft.block(block, before));
		return keep(before, after, "timetable.block-changed", actor,
				(line) -> line.from(words(before, before.plan(), block), words(before, after, block)));
	}

	/** Let a block be earlier or later in the order of its sheet, by so many places. */
	@Transactional
	public PlanView move(CompetitionId id, int seen, UUID block, int places, Actor actor) {
		PlanView before = hold(id, seen);
		Block moved = found(before, block);
		Plan after = before.plan().with(moved, Math.max(0, before.plan().position(moved) + places));
		return keep(before, after, "timetable.block-moved", actor,
				(line) -> line.from(words(before, before.plan(), block), words(before, after, block)));
	}

	/** Take a block out of the plan. */
	@Transactional
	public PlanView remove(CompetitionId id, int seen, UUID block, Actor actor) {
		PlanView before = hold(id, seen);
		found(before, block);
		return keep(before, before.plan().without(block), "timetable.block-removed", actor,
				(line) -> line.from(words(before, before.plan(), block), ""));
	}

	/**
	 * Say when a surface can be used on a day, for the first time or differently.
	 * @throws RuleViolationException {@code timetable-day} for a day that is not the
	 * competition's, nor the one before it or after it
	 */
	@Transactional
	public PlanView set(CompetitionId id, int seen, SheetDraft draft, Actor actor) {
		PlanView before = hold(id, seen);
		Plan after = draft.into(before.plan(), this.competitions.competition(id).facts());
		Plan.Place place = draft.place(after);
		String was = before.plan().sheet(place).map((sheet) -> PlanWords.sheet(before.plan(), sheet)).orElse("");
		return keep(before, after, was.isEmpty() ? "timetable.sheet-added" : "timetable.sheet-changed", actor,
				(line) -> line.from(was, PlanWords.sheet(after, after.sheet(place).orElseThrow())));
	}

	/**
	 * Use a surface no longer on a day.
	 * @throws RuleViolationException {@code timetable-sheet-used} while a block is there
	 */
	@Transactional
	public PlanView remove(CompetitionId id, int seen, Plan.Place place, Actor actor) {
		PlanView before = hold(id, seen);
		Sheet sheet = before.plan().sheet(place).orElseThrow(() -> NotFoundException.of("timetable-sheet", place));
		if (!before.plan().on(place).isEmpty()) {
			throw new RuleViolationException("timetable-sheet-used", Sentence.of("timetable.sheet-used"));
		}
		return keep(before, before.plan().without(place), "timetable.sheet-removed", actor,
				(line) -> line.from(PlanWords.sheet(before.plan(), sheet), ""));
	}

	/** Make all times from other rules. */
	@Transactional
	public PlanView rule(CompetitionId id, int seen, PlanRules rules, Actor actor) {
		PlanView before = hold(id, seen);
		return keep(before, before.plan().by(rules), "timetable.rules-changed", actor,
				(line) -> line.from(PlanWords.rules(before.plan().rules()), PlanWords.rules(rules)));
	}

	/** Make all times with what was measured of one way of judging. */
	@Transactional
	PlanView measured(CompetitionId id, int seen, MeasuredMarking.Measure measure, Actor actor) {
		PlanView before = hold(id, seen);
		PlanRules was = before.plan().rules();
		PlanRules rules = new PlanRules(was.team().marking(measure.points(), measure.seconds()), was.ice(), was.care());
		return keep(before, before.plan().by(rules), "timetable.rules-changed", actor,
				(line) -> line.from(PlanWords.rules(was), PlanWords.rules(rules))
					.because("Measured today with %d teams".formatted(measure.teams())));
	}

	/** By which rules a state of the plan had its times. */
	PlanRules rules(CompetitionId id, int number) {
		return state(id, number).rules();
	}

	/**
	 * Take the last act back: the plan is as it was before it. Twice takes back two acts,
	 * not the taking back.
	 * @throws ConflictException {@code timetable-nothing-before} where there is no
	 * earlier state
	 */
	@Transactional
	public PlanView takeBack(CompetitionId id, int seen, Actor actor) {
		PlanView before = hold(id, seen);
		Plan earlier = earlier(id, before);
		return keep(before, earlier, "timetable.taken-back", actor,
				(line) -> line.from(PlanWords.summary(before.plan()), PlanWords.summary(earlier)));
	}

	/** Goes back over acts that were taken back already. */
	private Plan earlier(CompetitionId id, PlanView now) {
		int number = now.number();
		int skip = 1;
		while (number > 0) {
			PlanRow row = this.rows.findByCompetitionAndNumber(id.value(), number).orElseThrow();
			boolean taken = row.act().action().equals("timetable.taken-back");
			if (taken) {
				skip++;
			}
			else if (--skip == 0) {
				return state(id, number - 1);
			}
			number--;
		}
		throw new ConflictException("timetable-nothing-before", Sentence.of("timetable.nothing-before"));
	}

	/** A state of the plan; its days with nothing on them where there is none. */
	private Plan state(CompetitionId id, int number) {
		return this.rows.findByCompetitionAndNumber(id.value(), number)
			.map((row) -> this.text.plan(row.body()))
			.orElseGet(() -> FirstPlan.empty(this.competitions.competition(id).facts(), SURFACE));
	}

	/** Hold the competition, so that two people at it come one after the other. */
	PlanView hold(CompetitionId id, int seen) {
		CompetitionView competition = this.competitions.holding(id);
		if (!competition.state().isOpenToChange()) {
			throw new ConflictException("timetable-final",
					Sentence.of("timetable.final", competition.state().name().toLowerCase(Locale.ROOT)));
		}
		PlanView now = plan(id);
		ConflictException.requireSeen(SUBJECT, seen, now.number());
		return now;
	}

	private static Block found(PlanView view, UUID block) {
		return view.plan().block(block).orElseThrow(() -> NotFoundException.of("timetable-block", block));
	}

	private PlanView keep(PlanView before, Plan after, String action, Actor actor, UnaryOperator<AuditedChange> words) {
		CompetitionId id = before.competition();
		PlanRow row = new PlanRow(this.acts.nextId(), id, before.number() + 1, action, this.text.write(after), actor,
				this.acts.now());
		try {
			this.rows.saveAndFlush(row);
		}
		catch (DataIntegrityViolationException ex) {
			throw ConflictException.stale(SUBJECT);
		}
		this.acts.publish(words.apply(AuditedChange.of(actor, SUBJECT, id, action)));
		return new PlanView(id, row.number(), row.act(), after, before.programme(),
				Layout.of(after, before.programme()));
	}

	private static String words(PlanView view, Plan plan, UUID block) {
		Laid laid = Layout.of(plan, view.programme());
		return PlanWords.block(plan, Objects.requireNonNull(laid.block(block).orElse(null)), view.programme());
	}

}
