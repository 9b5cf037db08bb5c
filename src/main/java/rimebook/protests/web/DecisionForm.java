package rimebook.protests.web;

/** A decision with its grounds, on a protest or on a correction. */
class DecisionForm {

	private int version;

	private String grounds = "";

	public int getVersion() {
		return this.version;
	}

	public void setVersion(int version) {
		this.version = version;
	}

	public String getGrounds() {
		return this.grounds;
	}

	public void setGrounds(String grounds) {
		this.grounds = grounds;
	}

}
