package rimebook.accounts;

import java.io.Serializable;
import java.util.UUID;

/**
 * What a paired tablet may act for: one seat of one panel.
 *
 * @param seat the seat's identity
 * @param label the seat as printed on the record, such as {@code "Judge 3, Adult"}
 */
public record SeatGrant(UUID seat, String label) implements Serializable {
}
