package rimebook.results;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Moment;
import rimebook.wording.Sentence;

/**
 * All that has to be so before a segment's result is official, in the order in which
 * people come to it: what each guard watches over, the posting, and both signatures.
 */
@Service
public class SignatureChecklist {

	private final List<SignatureGuard> guards;

	private final Standings standings;

	private final Competitions competitions;

	SignatureChecklist(List<SignatureGuard> guards, Standings standings, Competitions competitions) {
		this.guards = List.copyOf(guards);
		this.standings = standings;
		this.competitions = competitions;
	}

	/**
	 * List the conditions; none before the segment was opened. What is missing is what a
	 * signature is refused for now.
	 */
	@Transactional(readOnly = true)
	public List<SignatureCondition> of(SegmentId segment) {
		return this.standings.result(segment).map((result) -> of(segment, result)).orElse(List.of());
	}

	private List<SignatureCondition> of(SegmentId segment, SegmentResultView result) {
		ZoneId zone = this.competitions.competition(this.competitions.eventOf(segment).competition()).zone();
		List<SignatureCondition> all = new ArrayList<>(guarded(segment));
		all.add(posted(result, zone));
		all.add(signature(Signatories.Signatory.REFEREE, result, zone));
		all.add(signature(Signatories.Signatory.ACCOUNTANT, result, zone));
		return all;
	}

	private List<SignatureCondition> guarded(SegmentId segment) {
		return this.guards.stream().flatMap((guard) -> guard.conditions(segment).stream()).toList();
	}

	/** The entity refuses a signature before the posting by itself. */
	private static SignatureCondition posted(SegmentResultView result, ZoneId zone) {
		String path = "/desk/results/" + result.segment() + "#next";
		SegmentResultView.Posted posted = result.posted();
		return (posted == null) ? SignatureCondition.missing("posted", Sentence.of("results.not-posted-yet"), path)
				: SignatureCondition.met("posted",
						Sentence.of("results.posted-by", posted.by(), time(posted.at(), zone)), path);
	}

	private static SignatureCondition signature(Signatories.Signatory who, SegmentResultView result, ZoneId zone) {
		SegmentResultView.Signature signature = result.signatures().of(who);
		String path = "/desk/results/" + result.segment() + "#next";
		Instant at = signature.at();
		return (at == null)
				? SignatureCondition.due(who.code(), Sentence.of("results.not-signed-yet", who.spoken()), path)
				: SignatureCondition.met(who.code(), Sentence.of("results.signed-by", signature.name(), time(at, zone)),
						path);
	}

	private static Sentence time(Instant at, ZoneId zone) {
		return Moment.of(at.atZone(zone));
	}

	/**
	 * Refuse a signature while a guard misses something.
	 * @throws RuleViolationException {@code signature-held-back}
	 */
	void requireMet(SegmentId segment) {
		guarded(segment).stream().filter(SignatureCondition::holdsBack).findFirst().ifPresent((condition) -> {
			throw new RuleViolationException("signature-held-back", condition.sentence());
		});
	}

	/**
	 * One thing that has to be so before a result is signed.
	 *
	 * @param key what it is, the last part of the message {@code results.check.<key>}
	 * @param state how it stands
	 * @param sentence how it stands in words; a refused signature says it
	 * @param path the page on which it is mended or read
	 */
	public record SignatureCondition(String key, State state, Sentence sentence, String path) {

		/** How a condition stands. */
		public enum State {

			/** It is so. */
			MET,

			/** It is not so, and nobody signs before it is. */
			MISSING,

			/** Not so yet, but it holds nothing back. */
			DUE

		}

		/** It is so. */
		public static SignatureCondition met(String key, Sentence sentence, String path) {
			return new SignatureCondition(key, State.MET, sentence, path);
		}

		/** It is not so: a signature is refused with that sentence. */
		public static SignatureCondition missing(String key, Sentence sentence, String path) {
			return new SignatureCondition(key, State.MISSING, sentence, path);
		}

		/** It is not so yet; that holds no signature back. */
		public static SignatureCondition due(String key, Sentence sentence, String path) {
			return new SignatureCondition(key, State.DUE, sentence, path);
		}

		/** Tell whether a signature is refused for it. */
		public boolean holdsBack() {
			return this.state == State.MISSING;
		}

	}

}
