package rimebook.protests.web;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.JudgedElement;

/** Another element or deduction in one place of a closed performance, as typed. */
record SheetCorrectionForm(@Nullable String performance, @Nullable String line, @Nullable String code,
		JudgedElement.@Nullable ElementWorth worth, @Nullable String item, @Nullable String count,
		@Nullable String agreed, @Nullable String reason, @Nullable String protest) {

	SheetCorrectionForm {
		worth = (worth != null) ? worth : JudgedElement.ElementWorth.COUNTS;
		count = (count != null) ? count : "1";
	}

}
