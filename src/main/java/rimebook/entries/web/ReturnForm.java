package rimebook.entries.web;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** Why the withdrawal of a team is taken back. */
record ReturnForm(@NotBlank(message = "{entries.return.reason.missing}") @Size(max = 500,
		message = "{entries.withdraw.reason.long}") String reason, @Nullable Integer version) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : -1;
	}

}
