package rimebook.tabulation.points;

/**
 * What a component earned.
 *
 * @param rule the component and its factor
 * @param panel how the marks were averaged; its mean is what sheets print
 * @param points the mean times the factor, rounded
 */
public record ComponentScore(ComponentRule rule, PanelMean panel, Points points) {

	static ComponentScore of(ComponentRule rule, PanelMean panel) {
		return new ComponentScore(rule, panel, panel.mean().times(rule.factor()));
	}

	/**
	 * Write the product before it was rounded.
	 * @return with four decimals, for example {@code 9.7755}
	 */
	public String product() {
		return this.panel.mean().exactProduct(this.rule.factor()).toPlainString();
	}

	/**
	 * Show how the points were made.
	 * @return one sentence with every rounding step
	 */
	public String working() {
		return this.rule.name() + ": mean of the marks: " + this.panel.working() + "; " + this.panel.mean() + " x "
				+ this.rule.factorText() + " = " + product() + ", rounded " + this.points;
	}

}
