package rimebook.stand.web;

import java.time.Instant;
import java.util.List;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

import rimebook.clock.ClockView;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.stand.StandView;

/**
 * Turns what the clock found into notices to the panel, for placement judging. One that
 * was told is not proposed again.
 */
@Component
class ClockNotices {

	/**
	 * 0.1 from both marks for each ten seconds or part of it: US Figure Skating, rules
	 * about programme timing, editions of 2006 and 2012. A published amount, so no notice
	 * is marked as from memory.
	 */
	private static final int SECONDS_EACH = 10;

	/**
	 * No mark loses more than it can have, 6.0 (US Figure Skating, "The 6.0 System": 0 to
	 * 6.0 in tenths), however long a clock was forgotten. In tenths.
	 */
	private static final int MOST = 60;

	private final MessageSource messages;

	ClockNotices(MessageSource messages) {
		this.messages = messages;
	}

	List<ClockProposal> of(StandView.Now onIce) {
		return onIce.clock()
			.findings()
			.stream()
			.filter((finding) -> finding.fault() != ClockView.ClockFinding.Fault.INTERRUPTION)
			.map(this::notice)
			.filter((proposal) -> !isTold(proposal, onIce))
			.toList();
	}

	private ClockProposal notice(ClockView.ClockFinding finding) {
		int tenths = Math.min(finding.steps(SECONDS_EACH), MOST);
		String text = this.messages.getMessage("stand.clock.notice." + finding.fault(),
				new Object[] { String.valueOf(finding.seconds()), tenths / 10 + "." + tenths % 10 },
				LocaleContextHolder.getLocale());
		return new ClockProposal(finding, text, "", 0, false);
	}

	/** The same words were told, or, once it was known, something else about the time. */
	private static boolean isTold(ClockProposal proposal, StandView.Now onIce) {
		return onIce.remarks()
			.stream()
			.map(RemarkReceipts.ToPanel::remark)
			.filter((remark) -> remark.kind() == Remarks.RemarkKind.TIME)
			.anyMatch((remark) -> tells(remark, proposal, onIce));
	}

	/** One that rests on a touch tells of what was found by that touch only. */
	private static boolean tells(Remarks.RemarkView remark, ClockProposal proposal, StandView.Now onIce) {
		if (remark.touch() != null) {
			return remark.touch().equals(proposal.finding().since());
		}
		return remark.text().equals(proposal.text()) || isAnswer(remark, proposal, onIce);
	}

	private static boolean isAnswer(Remarks.RemarkView remark, ClockProposal proposal, StandView.Now onIce) {
		Instant stopped = onIce.clock().times().stoppedAt();
		return onIce.clock()
			.findings()
			.stream()
			.filter((finding) -> finding.fault() == proposal.finding().fault())
			.anyMatch((finding) -> !remark.notedAt().isBefore(finding.since())
					&& (finding.since().equals(stopped) || stopped == null || remark.notedAt().isBefore(stopped)));
	}

}
