package rimebook.letters;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Languages;
import rimebook.wording.Sentence;

/**
 * What letters say: the house's own words, or what a competition has made of them. Each
 * change is a version; an earlier one, or the house's words, are taken up again by a
 * further one. The record is told that words changed and never which.
 */
@Service
@Transactional(readOnly = true)
public class LetterTexts {

	/** The longest body of a text. */
	private static final int LONGEST = 10_000;

	private final TextStore store;

	private final Competitions competitions;

	private final MessageSource messages;

	private final Acts acts;

	LetterTexts(TextStore store, Competitions competitions, MessageSource messages, Acts acts) {
		this.store = store;
		this.competitions = competitions;
		this.messages = messages;
		this.acts = acts;
	}

	/** All names that may stand in square brackets in a text. */
	public static List<String> placeholders() {
		return Placeholders.KNOWN;
	}

	/**
	 * The text in force.
	 * @throws NotFoundException if there is no such competition
	 */
	public Version of(Key key) {
		this.competitions.competition(key.competition());
		return newest(key);
	}

	/** All versions, the newest first; the last is the house's own. */
	public List<Version> versions(Key key) {
		List<Version> all = new ArrayList<>(
				this.store.of(key).stream().map((version) -> version.orHouse(house(key))).toList());
		all.add(house(key));
		return all;
	}

	/**
	 * Write other words.
	 * @param seen the number of the version that was looked at, 0 for the house's own
	 * @throws ConflictException {@code stale-version}
	 * @throws RuleViolationException naming the field that does not fit, with the places
	 * that nobody can fill in
	 */
	@Transactional
	public void change(Key key, int seen, Draft.Content typed, Actor actor) {
		write(key, seen, checked(typed), actor);
	}

	/**
	 * Take up an earlier version again.
	 * @param number which; 0 for the house's own words
	 * @throws ConflictException {@code stale-version}
	 * @throws NotFoundException if there is no version of that number
	 */
	@Transactional
	public void restore(Key key, int seen, int number, Actor actor) {
		Version again = versions(key).stream()
			.filter((version) -> version.number() == number)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("letter-text", number));
		write(key, seen, again.isHouses() ? Draft.Content.EMPTY : again.content(), actor);
	}

	private void write(Key key, int seen, Draft.Content words, Actor actor) {
		this.competitions.holding(key.competition());
		Version before = newest(key);
		ConflictException.requireSeen("letter-text", seen, before.number());
		boolean toHouse = words.equals(Draft.Content.EMPTY);
		if (toHouse ? before.isHouses() : words.equals(before.content())) {
			return;
		}
		Version next = new Version(seen + 1, words, toHouse, actor.name(), this.acts.now());
		this.store.add(this.acts.nextId(), key, next);
		this.acts.publish(AuditedChange.of(actor, "letters", key.competition(), "letters.text-changed")
			.from(key.inWords() + ": " + before.inWords(), key.inWords() + ": " + next.inWords()));
	}

	private static Draft.Content checked(Draft.Content typed) {
		String subject = Required.text("subject", typed.subject(), 200);
		String body = Required.text("body", typed.body().replace("\r\n", "\n").replace('\r', '\n'), LONGEST);
		if (subject.chars().anyMatch(Character::isISOControl)) {
			throw RuleViolationException.ofField("field-not-text", "subject", Sentence.of("shared.field.not-one-line"));
		}
		check("subject", subject);
		check("body", body);
		if (Placeholders.has(subject, Placeholders.FACTS)) {
			throw RuleViolationException.ofField("letter-placeholder", "subject",
					Sentence.of("letters.facts-in-subject"));
		}
		if (Placeholders.has(subject, Placeholders.LINK)) {
			// Subjects are shown on locked screens, and logged by mail servers.
			throw RuleViolationException.ofField("letter-placeholder", "subject",
					Sentence.of("letters.link-in-subject"));
		}
		if (Placeholders.count(body, Placeholders.LINK) > 1) {
			throw RuleViolationException.ofField("letter-placeholder", "body", Sentence.of("letters.link-twice"));
		}
		return new Draft.Content(subject, body);
	}

	private static void check(String field, String text) {
		List<String> unknown = Placeholders.unknown(text);
		if (!unknown.isEmpty()) {
			throw RuleViolationException.ofField("letter-placeholder", field,
					Sentence.of("letters.unknown-placeholder", unknown.get(0), String.join(", ", Placeholders.KNOWN)));
		}
	}

	/**
	 * The texts in force in every language. A free letter that was written in some
	 * languages only is the same for all the others, in the first of those.
	 */
	Map<Locale, Version> inForce(CompetitionId competition, LetterKind kind) {
		Map<Locale, Version> texts = Languages.SPOKEN.stream()
			.collect(Collectors.toMap((language) -> language,
					(language) -> newest(new Key(competition, kind, language))));
		if (kind == LetterKind.FREE) {
			Version written = Languages.SPOKEN.stream()
				.map((language) -> Objects.requireNonNull(texts.get(language)))
				.filter((text) -> !text.isHouses())
				.findFirst()
				.orElseThrow(() -> new RuleViolationException("letter-unwritten", Sentence.of("letters.unwritten")));
			texts.replaceAll((language, text) -> text.isHouses() ? written : text);
		}
		return texts;
	}

	private Version newest(Key key) {
		return this.store.newest(key).map((version) -> version.orHouse(house(key))).orElseGet(() -> house(key));
	}

	private Version house(Key key) {
		String name = "letters.text." + key.kind().key();
		return new Version(0, new Draft.Content(this.messages.getMessage(name + ".subject", null, key.language()),
				this.messages.getMessage(name + ".body", null, key.language())), true, "", null);
	}

	/** Which text. */
	public record Key(CompetitionId competition, LetterKind kind, Locale language) {

		String inWords() {
			return this.kind.key() + ", " + this.language.getDisplayLanguage(Locale.ENGLISH);
		}

	}

	/**
	 * A version of a text.
	 *
	 * @param number 0 for the house's own words, which were never changed
	 * @param isHouses whether these are the words of the house, taken up again or never
	 * changed
	 * @param by who wrote it, empty for the house
	 */
	public record Version(int number, Draft.Content content, boolean isHouses, String by, @Nullable Instant at) {

		/** What stands for the house's words is said in them. */
		private Version orHouse(Version house) {
			return this.isHouses ? new Version(this.number, house.content(), true, this.by, this.at) : this;
		}

		String inWords() {
			return this.isHouses ? "the house's words" : "version " + this.number;
		}

	}

}
