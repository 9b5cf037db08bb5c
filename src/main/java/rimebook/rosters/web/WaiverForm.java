package rimebook.rosters.web;

import java.util.Arrays;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.rosters.RosterView;
import rimebook.rosters.Waivers;
import rimebook.rosters.eligibility.Rule;
import rimebook.shared.NotFoundException;

/**
 * Why a rule is not held against somebody.
 *
 * @param place whose place it is about, empty for the whole team
 */
record WaiverForm(@Nullable String rule, @Nullable String place, @Nullable String reason) {

	Waivers.Waive order(EntryId entry) {
		return new Waivers.Waive(entry, named(this.rule),
				(this.place != null && !this.place.isBlank()) ? RosterView.PlaceId.of(this.place) : null,
				(this.reason != null) ? this.reason : "");
	}

	static Rule named(@Nullable String word) {
		return Arrays.stream(Rule.values())
			.filter((rule) -> rule.word().equals(word))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("page", String.valueOf(word)));
	}

}
