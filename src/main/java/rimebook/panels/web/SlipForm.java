package rimebook.panels.web;

/**
 * Where the slips send the tablets.
 *
 * @param address as typed
 */
record SlipForm(String address) {

}
