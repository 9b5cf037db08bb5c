package rimebook.protests.web;

import java.math.BigDecimal;

import org.jspecify.annotations.Nullable;

/** Other marks for one closed card, as typed. */
class CorrectionForm {

	private String performance = "";

	private String seat = "";

	private @Nullable BigDecimal first;

	private @Nullable BigDecimal second;

	private String line = "";

	private String value = "";

	private String reason = "";

	private String protest = "";

	public String getPerformance() {
		return this.performance;
	}

	public void setPerformance(String performance) {
		this.performance = performance;
	}

	public String getSeat() {
		return this.seat;
	}

	public void setSeat(String seat) {
		this.seat = seat;
	}

	public @Nullable BigDecimal getFirst() {
		return this.first;
	}

	public void setFirst(@Nullable BigDecimal first) {
		this.first = first;
	}

	public @Nullable BigDecimal getSecond() {
		return this.second;
	}

	public void setSecond(@Nullable BigDecimal second) {
		this.second = second;
	}

	/** In points judging: which line of the card. */
	public String getLine() {
		return this.line;
	}

	public void setLine(String line) {
		this.line = line;
	}

	/** In points judging: the grade or the mark, as typed. */
	public String getValue() {
		return this.value;
	}

	public void setValue(String value) {
		this.value = value;
	}

	public String getReason() {
		return this.reason;
	}

	public void setReason(String reason) {
		this.reason = reason;
	}

	public String getProtest() {
		return this.protest;
	}

	public void setProtest(String protest) {
		this.protest = protest;
	}

}
