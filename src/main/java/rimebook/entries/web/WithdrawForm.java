package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** Why a team withdraws. */
record WithdrawForm(@NotBlank(message = "{entries.withdraw.reason.missing}") @Size(max = 500,
		message = "{entries.withdraw.reason.long}") String reason, @Nullable Integer version) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : -1;
	}

}
