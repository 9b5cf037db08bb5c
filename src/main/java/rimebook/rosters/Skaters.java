package rimebook.rosters;

import java.security.SecureRandom;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.entries.ClubView;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The people who skate, each known once and on any number of rosters. The record is told
 * which facts changed and never what they are.
 */
@Service
@Transactional(readOnly = true)
public class Skaters {

	private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

	private static final Comparator<SkaterView> BY_NAME = Comparator
		.comparing((SkaterView skater) -> skater.facts().familyName(), String.CASE_INSENSITIVE_ORDER)
		.thenComparing((skater) -> skater.facts().givenName(), String.CASE_INSENSITIVE_ORDER);

	private final SkaterRepository skaters;

	private final Acts acts;

	private final SecureRandom random = new SecureRandom();

	Skaters(SkaterRepository skaters, Acts acts) {
		this.skaters = skaters;
		this.acts = acts;
	}

	/**
	 * Write somebody down who is not known yet.
	 * @throws RuleViolationException naming the field that does not fit
	 */
	@Transactional
	public SkaterView add(DraftSkater draft, Actor actor) {
		checkBirthDate(draft.birthDate());
		Skater skater = this.skaters.saveAndFlush(new Skater(this.acts.nextId(), draft, this.random));
		this.acts.publish(line(skater, "skater.added", actor).to(skater.attested()));
		return skater.view();
	}

	/**
	 * Mend what is known of somebody, on every roster they are on; nothing happens where
	 * all is as before.
	 * @throws ConflictException {@code stale-version}; {@code skater-deleted};
	 * {@code skater-merged}
	 * @throws RuleViolationException naming the field that does not fit
	 */
	@Transactional
	public SkaterView change(SkaterView.Id id, int version, DraftSkater draft, Actor actor) {
		checkBirthDate(draft.birthDate());
		Skater skater = found(id);
		SkaterView.Facts known = skater.view().facts();
		String before = skater.attested();
		if (draft.facts().equals(known)) {
			return skater.view();
		}
		skater.change(version, draft, this.random);
		this.skaters.flush();
		this.acts.publish(line(skater, "skater.changed", actor).from(before,
				skater.differences(known) + "; " + skater.attested()));
		return skater.view();
	}

	/**
	 * Note that somebody agrees that their name is printed and shown.
	 * @param guardian who agrees for a minor; empty where they agree themselves
	 * @param on the day they agreed
	 */
	@Transactional
	public SkaterView agree(SkaterView.Id id, int version, @Nullable String guardian, @Nullable LocalDate on,
			Actor actor) {
		String forThem = Name.optional("guardian", guardian);
		if (on == null) {
			throw RuleViolationException.ofField("field-missing", "on", Sentence.of("shared.field.missing"));
		}
		return consent(id, version, new SkaterView.Consent(true, forThem, on), "skater.agreed", actor);
	}

	/** Note that somebody does not agree, or no longer, that their name is printed. */
	@Transactional
	public SkaterView disagree(SkaterView.Id id, int version, Actor actor) {
		return consent(id, version, SkaterView.Consent.NONE, "skater.disagreed", actor);
	}

	private SkaterView consent(SkaterView.Id id, int version, SkaterView.Consent consent, String act, Actor actor) {
		Skater skater = found(id);
		if (consent.equals(skater.view().consent())) {
			return skater.view();
		}
		String before = agreed(skater);
		skater.agree(version, consent, this.random);
		this.skaters.flush();
		this.acts.publish(line(skater, act, actor).from(before, agreed(skater)));
		return skater.view();
	}

	private static String agreed(Skater skater) {
		return (skater.view().consent().isGiven() ? "name may be printed" : "name is not printed") + "; "
				+ skater.attested();
	}

	/**
	 * Delete everything that is known of somebody: name, birth date, number, consent and
	 * the random bytes that the record's lines rest on; also what was written down of
	 * them a second time. Their places stay, without a name.
	 * @param reason up to 500 characters, without anything of the person
	 * @throws ConflictException {@code stale-version}; {@code skater-deleted}
	 */
	@Transactional
	public void erase(SkaterView.Id id, int version, String reason, Actor actor) {
		String why = Required.text("reason", reason, 500);
		Skater skater = found(id);
		checkTellsNothing(why, skater.view());
		String before = skater.attested();
		skater.erase(version, this.acts.now());
		this.skaters.flush();
		this.acts.publish(line(skater, "skater.deleted", actor).from(before, skater.attested()).because(why));
		this.skaters.findByMergedInto(id.value()).stream().filter((too) -> !too.view().isErased()).forEach((too) -> {
			checkTellsNothing(why, too.view());
			String attested = too.attested();
			too.erase(this.acts.now());
			this.skaters.flush();
			this.acts.publish(line(too, "skater.deleted", actor).from(attested, too.attested()).because(why));
		});
	}

	/**
	 * Refuse a text that is to stand on the record for ever if it names somebody or tells
	 * their birth date or number.
	 */
	static void checkTellsNothing(String text, SkaterView skater) {
		String plain = Name.compared(text);
		SkaterView.Facts facts = skater.facts();
		boolean tells = !facts.familyName().isEmpty() && plain.contains(Name.compared(facts.familyName()))
				|| facts.birthDate() != null && plain.contains(facts.birthDate().toString())
				|| facts.membershipNumber().length() > 2 && plain.contains(Name.compared(facts.membershipNumber()));
		if (tells) {
			throw RuleViolationException.ofField("reason-personal", "reason", Sentence.of("rosters.reason-personal"));
		}
	}

	/**
	 * The person of that identity.
	 * @throws NotFoundException if there is none
	 */
	public SkaterView skater(SkaterView.Id id) {
		return found(id).view();
	}

	/**
	 * Who these are today, by the identities asked for: whoever turned out to be somebody
	 * else is that person, and an identity that is unknown here is left out.
	 */
	public Map<SkaterView.Id, SkaterView> today(Collection<SkaterView.Id> ids) {
		Map<SkaterView.Id, SkaterView> there = views(ids);
		Map<SkaterView.Id, SkaterView> others = views(
				there.values().stream().flatMap((skater) -> Stream.ofNullable(skater.mergedInto())).toList());
		there.replaceAll((id, skater) -> (skater.mergedInto() != null)
				? others.getOrDefault(skater.mergedInto(), skater) : skater);
		return there;
	}

	private Map<SkaterView.Id, SkaterView> views(Collection<SkaterView.Id> ids) {
		Map<SkaterView.Id, SkaterView> views = new LinkedHashMap<>();
		this.skaters.findAllById(ids.stream().map(SkaterView.Id::value).distinct().toList())
			.forEach((skater) -> views.put(skater.view().id(), skater.view()));
		return views;
	}

	/** Everybody of whom something is known, by family name. */
	public List<SkaterView> all() {
		return this.skaters.findByErasedAtIsNullAndMergedIntoIsNull()
			.stream()
			.map(Skater::view)
			.sorted(BY_NAME)
			.toList();
	}

	/**
	 * Who is known by that name, however it was written, by the same birth date first;
	 * those of the same club before others.
	 */
	List<SkaterView> known(String name, ClubView.Id club) {
		return this.skaters.findByErasedAtIsNullAndMergedIntoIsNull()
			.stream()
			.filter((skater) -> skater.isCalled(name))
			.map(Skater::view)
			.sorted(Comparator.comparing((SkaterView skater) -> !skater.club().equals(club)))
			.toList();
	}

	/** Who that is for sure: the same name and the same birth date, or number. */
	Optional<SkaterView> same(DraftSkater draft) {
		return known(draft.name(), draft.club()).stream()
			.filter((skater) -> PeopleIndex.isSame(skater.facts(), draft))
			.findFirst();
	}

	private void checkBirthDate(@Nullable LocalDate date) {
		LocalDate today = LocalDate.ofInstant(this.acts.now(), ZoneOffset.UTC);
		if (date != null && (date.isBefore(EARLIEST) || date.isAfter(today))) {
			throw RuleViolationException.ofField("birth-date-unlikely", "birthDate",
					Sentence.of("rosters.birth-date-unlikely"));
		}
	}

	private static AuditedChange line(Skater skater, String act, Actor actor) {
		return AuditedChange.of(actor, "skater", skater.view().id(), act);
	}

	private Skater found(SkaterView.Id id) {
		return this.skaters.findById(id.value()).orElseThrow(() -> NotFoundException.of("skater", id));
	}

}
