package rimebook.panels;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

/**
 * An interest that an official declared.
 *
 * @param team the team's name
 * @param lastDay the bond's last day, {@code null} while it lasts
 */
public record InterestView(InterestId id, InterestKind kind, String team, @Nullable LocalDate lastDay) {

}
