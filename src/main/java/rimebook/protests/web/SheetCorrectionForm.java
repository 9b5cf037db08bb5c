package rimebook.protests.web;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementWorth;

/** Another element or deduction in one place of a closed performance, as typed. */
record SheetCorrectionForm(@Nullable String performance, @Nullable String line, @Nullable String code,
		@Nullable ElementWorth worth, @Nullable String item, @Nullable String count, @Nullable String agreed,
		@Nullable String reason, @Nullable String protest) {

	SheetCorrectionForm {
		worth = (worth != null) ? worth : ElementWorth.COUNTS;
		count = (count != null) ? count : "1";
	}

}
