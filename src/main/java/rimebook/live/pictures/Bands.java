package rimebook.live.pictures;

import rimebook.published.Standing;

/**
 * The places that a team can still get, as a band from the first place to the last.
 *
 * @param places how many there are, at least one
 */
public record Bands(int places) {

	/** As many places as the outlook speaks of teams. */
	public static Bands of(Standing.Outlook outlook) {
		int worst = outlook.chances()
			.stream()
			.mapToInt((chance) -> Math.max(chance.segment().worst(),
					(chance.event() != null) ? chance.event().worst() : 1))
			.max()
			.orElse(1);
		return new Bands(worst);
	}

	/** The band of a team; the look says whether both ends can really come about. */
	public Bar of(Standing.Outlook.Range range) {
		return Bar.lying(Percent.of(range.best() - 1, this.places),
				Percent.of(range.worst() - range.best() + 1, this.places), range.exact() ? "exact" : "bound");
	}

}
