package rimebook.draw.web;

import java.util.List;

/** The lines of one warm-up group. */
record StartGroup(int number, List<StartRow> rows) {

}
