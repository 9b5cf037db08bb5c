package rimebook.competition.web;

import java.util.List;

import rimebook.competition.JudgingMethod;
import rimebook.competition.RuleSets;
import rimebook.pages.Choice;
import rimebook.tabulation.CardTieBreak;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EqualJudgesInFavour;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.SharedOrdinals;
import rimebook.tabulation.ZeroMark;

/** What there is to choose from in the form of an event, the usual answer first. */
record EventChoices(List<JudgingMethod> methods, List<SegmentKind> kinds, List<CardTieBreak> tieBreaks,
		List<SharedOrdinals> sharedOrdinals, List<EqualJudgesInFavour> equalJudges, List<ZeroMark> zeroMarks,
		List<DisqualifiedPlaces> disqualifiedPlaces, List<Choice> points) {

	EventChoices(List<JudgingMethod> methods, RuleSets ruleSets) {
		this(methods, List.of(SegmentKind.values()), List.of(CardTieBreak.SECOND_MARK, CardTieBreak.FIRST_MARK),
				List.of(SharedOrdinals.values()), List.of(EqualJudgesInFavour.values()), List.of(ZeroMark.values()),
				List.of(DisqualifiedPlaces.values()), PointsOffer.of(ruleSets));
	}

}
