package rimebook.live;

/**
 * The addresses at which two teams are put beside each other.
 *
 * @param base of the segment or event
 * @param pageLanguage the language that links carry on
 */
record WhyLinks(String base, PageLanguage pageLanguage) {

	/** Where the two are chosen. */
	public String choose() {
		return this.base + this.pageLanguage.query();
	}

	/** Where the form of the choice is sent, which leads on to {@link #pair}. */
	public String ask() {
		return this.base + "/ask";
	}

	/** Two teams in the newest standing. */
	public String pair(String one, String other) {
		return this.base + "/" + one + "/" + other + this.pageLanguage.query();
	}

	/** The same in one version, for ever. */
	public String pair(String one, String other, int version) {
		return this.base + "/" + one + "/" + other + "/" + version + this.pageLanguage.query();
	}

	/** The language to be sent along with the form, empty for none. */
	public String language() {
		return this.pageLanguage.chosen() ? this.pageLanguage.locale().getLanguage() : "";
	}

}
