package rimebook.live;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.live.pictures.Bands;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.wording.Figures;
import rimebook.wording.Sentence;

/** Writes what a public page says beside figures, places and times. */
class PageWords extends Figures {

	PageWords(Locale locale) {
		super(locale);
	}

	/** The key of the words for places that a team can still get. */
	public String rangeKey(Standing.Outlook.Range range) {
		return "live.outlook." + (range.isCertain() ? "certain" : range.exact() ? "range" : "within");
	}

	/** The words of the trade that a standing uses. */
	public List<String> terms(Standing standing) {
		return TradeWords.of(standing);
	}

	/** Those that a standing of an event can use, there may be none yet. */
	public List<String> termsOf(EventView event, boolean combined) {
		return TradeWords.of(event.judging().method(), combined);
	}

	/** All of them. */
	public List<String> allTerms() {
		return TradeWords.all();
	}

	/** The word that a figure of a standing is; empty where it is none. */
	public String termOf(String code) {
		return TradeWords.ofFigure(code);
	}

	/** Draws the places that teams can still get. */
	public Bands bands(Standing.Outlook outlook) {
		return Bands.of(outlook);
	}

	/** The key of the words for why a version was published. */
	public String causeKey(ResultVersion version) {
		return "live.cause." + version.cause().name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/**
	 * What a version says about itself to everybody. Why a team withdrew is not
	 * everybody's business; what was corrected is.
	 */
	public Sentence note(ResultVersion version) {
		return PublicNote.of(version);
	}

	/**
	 * A name in a few capitals, for where there is little room: SP for short programme.
	 */
	public String initials(String name) {
		return Arrays.stream(name.strip().split("[\\s-]+"))
			.map((word) -> word.substring(0, word.offsetByCodePoints(0, Math.min(1, word.length()))))
			.collect(Collectors.joining())
			.toUpperCase(locale());
	}

	/** The days of a competition in words: "14–15 February 2026". */
	public String days(CompetitionView competition) {
		return days(competition.facts().firstDay(), competition.facts().lastDay());
	}

}
