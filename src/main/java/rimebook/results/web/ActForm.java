package rimebook.results.web;

import org.jspecify.annotations.Nullable;

import rimebook.results.Signatories;

/** What the results desk sends with an act on a result. */
class ActForm {

	private int version;

	private Signatories.@Nullable Signatory signatory;

	private String reason = "";

	private String password = "";

	public int getVersion() {
		return this.version;
	}

	public void setVersion(int version) {
		this.version = version;
	}

	public Signatories.@Nullable Signatory getSignatory() {
		return this.signatory;
	}

	public void setSignatory(Signatories.@Nullable Signatory signatory) {
		this.signatory = signatory;
	}

	public String getReason() {
		return this.reason;
	}

	public void setReason(String reason) {
		this.reason = reason;
	}

	/** The password of the person who signs; never shown again. */
	public String getPassword() {
		return this.password;
	}

	public void setPassword(String password) {
		this.password = password;
	}

}
