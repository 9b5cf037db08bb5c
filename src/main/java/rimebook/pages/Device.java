package rimebook.pages;

/**
 * The device a request came from, as it stands on the record: address and kind of
 * browser, such as {@code "192.168.4.21, Firefox"}. Declare it as a parameter of a
 * controller method to be given it. At most 200 characters.
 *
 * @param description the address and kind of browser
 */
public record Device(String description) {

	@Override
	public String toString() {
		return this.description;
	}

}
