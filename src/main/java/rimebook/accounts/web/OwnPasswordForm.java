package rimebook.accounts.web;

import org.jspecify.annotations.Nullable;

/** What is typed to replace one's own password; never sent back to the page. */
record OwnPasswordForm(@Nullable String current, @Nullable String password, @Nullable String again) {

	OwnPasswordForm {
		current = (current != null) ? current : "";
		password = (password != null) ? password : "";
		again = (again != null) ? again : "";
	}

	@Override
	public String toString() {
		return "OwnPasswordForm[]";
	}

}
