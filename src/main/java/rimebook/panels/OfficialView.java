package rimebook.panels;

/**
 * An official of the register.
 *
 * @param club empty for somebody who belongs to none
 * @param qualification empty where none is written down
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record OfficialView(OfficialId id, String name, String club, String qualification, int version) {

}
