package rimebook.keying;

/** The name under the paper on which the technical controller authorised the list. */
class AuthorisationForm extends KeyedForm {

	private String controller = "";

	static AuthorisationForm of(KeyingPage page) {
		AuthorisationForm form = new AuthorisationForm();
		form.restOn(page, (page.sheet().list() != null) ? page.sheet().list().sequence() - 1 : 0);
		return form;
	}

	public String getController() {
		return this.controller;
	}

	public void setController(String controller) {
		this.controller = controller;
	}

}
