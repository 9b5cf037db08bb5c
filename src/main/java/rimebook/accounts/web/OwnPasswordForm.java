package rimebook.accounts.web;

import org.jspecify.annotations.Nullable;

/** What is typed to replace one's own password; never sent back to the page. */
record OwnPasswordForm(@Nullable String current, @Nullable String password, @Nullable String again) {

	@Override
	public String current() {
		return (this.current != null) ? this.current : "";
	}

	@Override
	public String password() {
		return (this.password != null) ? this.password : "";
	}

	@Override
	public String again() {
		return (this.again != null) ? this.again : "";
	}

	@Override
	public String toString() {
		return "OwnPasswordForm[]";
	}

}
